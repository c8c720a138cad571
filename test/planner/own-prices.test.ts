/** Prices on the device: packs as text and back, over what is published or where nothing is. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { POUNDS } from '../../src/domain/money.ts';
import { planAnswer } from '../../src/planner/answer.ts';
import { readPrices } from '../../src/planner/kitchen-reader.ts';
import { packsFrom, packsText, withOwnPrices } from '../../src/planner/own-prices.ts';
import { planFrom } from '../../src/planner/plan-state.ts';
import { type PlannerContent, plannerContent } from '../../src/views/planner-content.ts';
import { demoContent } from '../samples/demo.ts';

let demo: Content;

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
});

const PLAN = 'recipe=vanilla-equal-weights&tins=1+x+round-6&finishes=raspberry-jam--filling';

function costOf(content: PlannerContent, prices: Record<string, string> = {}) {
  const { ingredients } = withOwnPrices(content.ingredients, prices, content.currency);
  const answer = planAnswer(planFrom(PLAN), { ...content, ingredients });
  if (!answer?.ok) throw new Error('no plan');
  return answer.value.cost;
}

const unpublished = (): PlannerContent => plannerContent({ ...demo, publishesOrders: false });

describe('prices', () => {
  it('are on the page only of a kitchen that shows what its orders cost', () => {
    expect(JSON.stringify(unpublished())).not.toContain('priceMinor');
    expect(JSON.stringify(plannerContent({ ...demo, publishesOrders: true }))).toContain('priceMinor');
    expect(costOf(unpublished())).toBeNull();
  });

  it('of every pack in the kitchen come back from their text', () => {
    const packed = demo.ingredients.filter(({ packs }) => packs !== undefined);
    expect(packed.length).toBeGreaterThan(20);
    for (const item of packed) {
      const back = packsFrom(packsText(item.packs ?? [], POUNDS), item, POUNDS);
      expect(back.ok ? back.value : back.problems, item.id).toEqual(item.packs);
    }
  });

  it('typed on the device add up line by line, and what has none is named', () => {
    // By hand: an egg is 30 p, butter 0.8 p a gram, flour 0.1 p; the jam is made, of three things.
    const cost = costOf(unpublished(), {
      butter: '250 g 2.00',
      egg: '6 1.80',
      'self-raising-flour': '1 kg 1.00',
    });
    const amount = (id: string): number => cost?.lines.find((line) => line.id === id)?.amount.value ?? 0;
    const pence = (id: string): number => cost?.lines.find((line) => line.id === id)?.cost.value ?? 0;
    expect(pence('egg')).toBe(amount('egg') * 30);
    expect(pence('butter')).toBe(Math.round(amount('butter') * 0.8));
    expect(pence('self-raising-flour')).toBe(Math.round(amount('self-raising-flour') * 0.1));
    expect(cost?.lines).toHaveLength(3);
    expect(cost?.total.value).toBe(pence('egg') + pence('butter') + pence('self-raising-flour'));
    expect(cost?.unpricedText).toBe(
      'caster sugar, lemon juice, raspberries, sugar with pectin and vanilla extract',
    );
  });

  it('that cannot be read are told with the ingredient’s name, and an empty text is no price', () => {
    const { ingredients, problems } = withOwnPrices(
      demo.ingredients,
      { butter: '250 g two pounds', egg: 'a dozen 3.05', 'caster-sugar': '' },
      POUNDS,
    );
    expect(problems.map(({ message }) => message.split(':')[0])).toEqual(['Butter', 'Butter', 'Egg']);
    for (const id of ['butter', 'egg', 'caster-sugar'])
      expect(ingredients.find((item) => item.id === id)?.packs, id).toBeUndefined();
  });

  it('of an ingredients.yaml are the texts that the planner keeps', () => {
    const text =
      'butter: { name: Butter, role: fat, allergens: [milk], packs: [{ size: 250 g, price: 2.15 }] }\n';
    expect(readPrices(text, POUNDS)).toEqual({ prices: { butter: '250 g 2.15' }, problems: [] });
    expect(readPrices('butter: { name: [ }', POUNDS).problems.length).toBeGreaterThan(0);
  });
});
