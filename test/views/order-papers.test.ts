/** What an order sheet sends one to the shelf for, and what it says of amounts beyond those on the cakes. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import type { OrderView } from '../../src/views/order.types.ts';
import { orderPapers } from '../../src/views/order-papers.ts';
import { type OrdersView, ordersView } from '../../src/views/orders.ts';
import { chartsOf, demoContent } from '../samples/demo.ts';
import { orderOf } from './support/order-of.ts';

let content: Content;
let view: OrdersView;
beforeAll(async () => {
  content = await demoContent();
  view = ordersView(content);
});

const order = (id: string): OrderView => orderOf(view, id);

const told = (one: OrderView, within: Content = content): string[][] =>
  orderPapers(one, within).map(({ kindText, paperName, forText, prints }) => [
    ...[kindText, paperName ?? '', forText],
    ...prints.map(({ stem }) => stem),
  ]);

const kinds = (one: OrderView, printables: Content['printables']): string[][] =>
  told(one, { ...content, printables }).map(([kind = '', , , ...stems]) => [kind, ...stems]);

describe('the papers of an order', () => {
  it('are a card for every batter and finish with the cakes it is for, templates, its own sheets and labels', () => {
    expect(told(order('three-tiers-for-sixty'))).toEqual([
      ['Recipe card', 'Equal-weights vanilla sponge', 'bottom tier', 'recipe-cards/vanilla-equal-weights'],
      [
        ...['Recipe card', 'Equal-weights vanilla sponge, Orange', 'middle tier and top tier'],
        'recipe-cards/vanilla-equal-weights',
      ],
      ['Finish card', 'Vanilla buttercream', '', 'finish-cards/vanilla-buttercream'],
      ['Finish card', 'Raspberry jam', 'bottom tier', 'finish-cards/raspberry-jam'],
      ['Finish card', 'Sugarpaste', '', 'finish-cards/sugarpaste'],
      [
        ...['Lining templates', '', 'six-inch round, eight-inch round and ten-inch round'],
        ...['templates/round-6', 'templates/round-8', 'templates/round-10'],
      ],
      ['Stack sheet', '', '', 'orders/three-tiers-for-sixty-stack-sheet'],
      ['Support template, true size', '', '', 'orders/three-tiers-for-sixty-support-template'],
      [
        ...['Labels and allergen cards', '', '', 'labels/orders/three-tiers-for-sixty-full'],
        'labels/orders/three-tiers-for-sixty-allergen-cards',
      ],
    ]);
  });

  it('are called as their cards are, tell of cups and dummies, and have no stack where nothing is stacked', () => {
    const titles = chartsOf(content).map(({ chart }) => chart.title);
    for (const one of view.orders)
      for (const { kind, paperName } of one.papers)
        if (kind === 'recipe-card') expect(titles).toContain(paperName);
    const fair = told(order('fair-trays'));
    expect(fair.map(([kind]) => kind)).not.toContain('Stack sheet');
    expect(fair.find(([kind]) => kind === 'Cutting guide')?.[3]).toBe('cutting-guides/portions');
    expect(told(order('numeral-six')).map(([kind]) => kind)).not.toContain('Cutting guide');
    expect(fair.find(([, name]) => name === 'All-in-one lemon sponge')?.[2]).toBe('cake 1 and cupcakes');
    expect(fair.find(([kind]) => kind === 'Lining templates')?.[2]).not.toContain('muffin');
    const square = told(order('square-and-round'));
    expect(square.find(([, name]) => name === 'Dark ganache, 2 to 1')?.[2]).toBe('');
  });

  it('leave out what the kitchen does not print, and know the folder of what it prints by a name', () => {
    const numeral = order('numeral-six');
    expect(kinds(numeral, [{ print: 'order-sheet' }])).toEqual([]);
    expect(
      kinds(numeral, [
        { print: 'recipe-card', name: 'mine', recipeIds: ['golden-carving-cake'] },
        { print: 'finish-card', finishIds: ['raspberry-jam'] },
        { print: 'lining-template', tinIds: ['round-6'] },
      ]),
    ).toEqual([
      ['Recipe card', 'recipe-cards/mine/golden-carving-cake'],
      ['Finish card', 'finish-cards/raspberry-jam'],
    ]);
  });
});

describe('amounts to make', () => {
  it('say what is to spare, what boils away and what is trimmed off, from the amounts themselves', () => {
    const { finishes } = order('three-tiers-for-sixty');
    expect(
      finishes.map(({ finish, spareText, boilsAwayText }) => [finish.id, spareText, boilsAwayText]),
    ).toEqual([
      ['vanilla-buttercream', 'with 10 % to spare', ''],
      ['raspberry-jam', 'with 8 % to spare', '18 % of what is weighed boils away'],
      ['sugarpaste', expect.stringMatching(/^of which \d+\u00a0g is trimmed off$/), ''],
    ]);
    // What is rolled out less what stays on the three cakes.
    const [, , sheet] = finishes;
    const off = Number(/\d+/.exec(sheet?.spareText ?? '')?.[0]);
    expect(Math.abs((sheet?.make.value ?? 0) - (sheet?.needed.value ?? 0) - off)).toBeLessThanOrEqual(0.5);
  });
});

describe('what a bowl leaves', () => {
  it('never contradicts the weights above it, in any order or week of the demo', () => {
    const bowls = [...view.orders, ...view.weeks].flatMap(({ batters }) =>
      batters.flatMap(({ bowlfuls }) => bowlfuls),
    );
    expect(bowls.length).toBeGreaterThan(12);
    let even = 0;
    for (const { batter, tins, afterText, surplus } of bowls) {
      const whole = (text: string): number => Number(text.replaceAll(',', ''));
      const filled = tins.map(({ each, count, pieces }) => whole(each.text) * (pieces ?? count).value);
      // Each figure may be half a gram off; a part of a large tin is told as it is.
      const slack = 0.5 + tins.reduce((sum, { count, pieces }) => sum + 0.5 * (pieces ?? count).value, 0);
      const left = whole(batter.text) - filled.reduce((sum, one) => sum + one, 0);
      const over = /^After filling: ([\d,.]+)\u0020g over/.exec(afterText)?.[1];
      if (over === undefined) {
        expect(afterText).toMatch(/^Nothing is left after filling[.:]/);
        expect(Math.abs(left)).toBeLessThanOrEqual(slack);
        even += 1;
      } else {
        expect(Math.abs(left - whole(over))).toBeLessThanOrEqual(slack + 0.5);
        expect(whole(batter.text)).not.toBe(Math.round(batter.value - surplus.value));
      }
    }
    // One bowl of the three tiers falls short by 3.4 g, which its tin's weight allows for.
    expect(even).toBeGreaterThan(1);
  });
});
