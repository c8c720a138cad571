/** What stands beside the tiers of an order, and dummies among them, as they are read. */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { POUNDS } from '../../src/domain/money.ts';
import { isDummy, stackOf } from '../../src/domain/order.ts';
import { type OrderContext, type OrderOutcome, parseOrderYaml } from '../../src/parse/orders.ts';
import { formatProblem } from '../../src/read/format-problem.ts';
import { demoContent } from '../samples/demo.ts';

let context: OrderContext;
beforeAll(async () => {
  const content = await demoContent();
  const names = (all: readonly { id: string }[]) => ({ ids: all.map(({ id }) => id), broken: [] });
  const { kitchen, recipes, flavours, finishes } = content;
  const bunTins = kitchen.bunTins ?? [];
  context = {
    ...{ tins: names(kitchen.tins), bunTins: names(bunTins), recipes: names(recipes) },
    ...{ flavours: names(flavours), finishes: names(finishes) },
    found: { tins: kitchen.tins, bunTins, recipes, finishes },
    ...{ currency: POUNDS, timeZone: 'Europe/London' },
  };
});

const HEAD = `title: Saturday
reference: R-1042
hand_over: { at: 2026-11-28 14:00, place: collected }
`;
const read = (lines: string): OrderOutcome =>
  parseOrderYaml(`${HEAD}${lines}`, 'saturday.yaml', 'saturday', context);
const told = (lines: string): string => read(lines).problems.map(formatProblem).join('\n');

describe('a dummy among the tiers', () => {
  const lines = `arrangement: stacked
tiers:
  - { tin: round-10, recipe: vanilla-equal-weights }
  - { dummy: { shape: square, side: 20 cm, height: 4in, supply: bought, each: 3.2 }, finishes: [{ finish: sugarpaste, use: rolled }] }
  - { tin: round-6, recipe: vanilla-equal-weights }
`;
  it('has its place in the stack, its size, its cover and its price', () => {
    const { order, problems } = read(lines);
    expect(problems).toEqual([]);
    expect(order?.dummies).toEqual([
      {
        ...{ at: 1, form: { shape: { kind: 'square', sideMm: 200 }, depthMm: 101.6 }, unit: 'cm' },
        ...{ finishes: [{ finishId: 'sugarpaste', use: 'rolled' }], supply: 'bought', eachMinor: 320 },
      },
    ]);
    expect(order?.tiers.map(({ tinId }) => tinId)).toEqual(['round-10', 'round-6']);
    expect(order === null ? [] : stackOf(order).map(isDummy)).toEqual([false, true, false]);
  });

  it('counts where tiers narrow upwards, and is named where they do not', () => {
    expect(told(lines.replace('side: 20 cm', 'side: 30 cm'))).toBe(
      `saturday.yaml:7:14: error [stack-overhangs] The dummy stands on 'round-10', which is no wider
    Write the tiers bottom first, each narrower than the one below.`,
    );
    expect(told(lines.replace('side: 20 cm', 'side: 12 cm'))).toContain(
      "[stack-overhangs] 'round-6' stands on a dummy, which is no wider",
    );
  });

  it('is not the top tier that is kept', () => {
    const top = `${lines}  - { dummy: { shape: round, across: 4in, height: 4in, supply: bought, each: 3.2 } }\nkeep_top_tier: yes\n`;
    expect(told(top)).toContain('[top-tier-kept] The top tier is kept back, but it is a dummy');
  });

  it('bought has no VAT of its own', () => {
    expect(told(lines.replace('each: 3.2 }', 'each: 3.2, vat: 20 % }'))).toContain(
      '[dummy-vat] A bought dummy is a cost of the cake; the customer sees no line of its own',
    );
  });

  it('a tier that is neither says what it lacks', () => {
    expect(told('tiers:\n  - { count: 2 }\n')).toBe(
      `saturday.yaml:5:5: error [key-missing] Item 1 of 'tiers' has no 'tin'
    Add it, for example 'tin: round-8'.
saturday.yaml:5:5: error [key-missing] Item 1 of 'tiers' has no 'recipe'
    Add it, for example 'recipe: vanilla-equal-weights'.`,
    );
  });
});

describe('small cakes', () => {
  const line = (own: string): string =>
    `small_cakes:\n  - { kind: cupcakes, pieces: 30, tin: muffin-12, recipe: vanilla-equal-weights${own} }\n`;

  it('take minutes from their tin and go twelve to a box where nothing else is said', () => {
    const { order, problems } = read(line(''));
    expect(problems).toEqual([]);
    expect(order?.tiers).toEqual([
      {
        ...{ tinId: 'muffin-12', recipeId: 'vanilla-equal-weights', flavourIds: [], count: 30, layers: 1 },
        ...{ finishes: [], beside: 'small cakes' },
        small: { kind: 'cupcakes', bake: { firstLookMin: 18, byMin: 22 }, toppings: [], box: 12 },
      },
    ]);
  });

  it('say their own case, heat, minutes, topping and box', () => {
    const own =
      ', case: 45 g, bake: { look: 16 min, by: 20 min, oven: 170C }, box: 6, finishes: [{ finish: vanilla-buttercream, each: 30 g }]';
    expect(read(line(own)).order?.tiers[0]?.small).toEqual({
      ...{ kind: 'cupcakes', caseG: 45, box: 6 },
      bake: { firstLookMin: 16, byMin: 20, ovenC: 170 },
      toppings: [{ finishId: 'vanilla-buttercream', eachG: 30 }],
    });
  });

  it('in a small tin of the kitchen’s need minutes of their own', () => {
    const small = line('').replace('muffin-12', 'round-4');
    expect(told(small)).toContain('[small-cakes-minutes] Nobody knows how long these small cakes bake');
    expect(told(small.replace(' }', ', bake: { look: 20 min, by: 25 min } }'))).toBe('');
  });

  it.each([
    ['a box of ten', ', box: 10', "[value-not-one-of] 'box' is 10, which is not known here"],
    ['a height over the rim', ', finished_height: 60 mm', '[height-over-rim] Twelve-cup muffin tin'],
    [
      'a topping without a weight',
      ', finishes: [{ finish: sugarpaste }]',
      "[key-missing] Item 1 of 'finishes' has no 'each'",
    ],
    ['a bare number for the case', ', case: 45', "[unit-missing] '45' has no unit"],
    [
      'one finish twice',
      ', finishes: [{ finish: sugarpaste, each: 5 g }, { finish: sugarpaste, each: 9 g }]',
      '[item-repeated]',
    ],
  ])('refuse %s', (_, own, expected) => {
    expect(told(line(own))).toContain(expected);
  });
});

describe('the order lines in the guide', () => {
  it('can be read as they stand', () => {
    const blocks = [...readFileSync('README.md', 'utf8').matchAll(/```yaml\n([\s\S]*?)```/g)];
    const lines = blocks.map(([, text = '']) => text).find((text) => text.includes('small_cakes:')) ?? '';
    const { order, problems } = read(lines);
    expect(problems).toEqual([]);
    expect(order?.tiers.map(({ beside }) => beside)).toEqual([undefined, 'cutting cake', 'small cakes']);
    expect(order?.dummies).toHaveLength(1);
  });
});

describe('a cutting cake', () => {
  it('is read like a tier, stands after them and beside them', () => {
    const { order, problems } = read(
      `arrangement: stacked
tiers:
  - { tin: round-8, recipe: vanilla-equal-weights }
  - { tin: round-6, recipe: vanilla-equal-weights }
cutting_cakes:
  - { tin: square-8, recipe: vanilla-equal-weights, count: 2, layers: 2 }
`,
    );
    expect(problems).toEqual([]);
    expect(order?.tiers[2]).toEqual({
      ...{ tinId: 'square-8', recipeId: 'vanilla-equal-weights', flavourIds: [], count: 2, layers: 2 },
      ...{ finishes: [], beside: 'cutting cake' },
    });
  });

  it('has its own place in messages', () => {
    expect(
      told('cutting_cakes:\n  - { tin: square-8, recipe: vanilla-equal-weights, count: 3 }\n'),
    ).toContain('saturday.yaml:5:12: warning [tin-owned-too-few]');
  });
});
