/** A levelled cake: thinner layers, offcuts that weigh and cost, and a label of what is left. */
import { beforeAll, describe, expect, it } from 'vitest';
import { levelled, levelMm } from '../../../src/compute/orders/levelled.ts';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import type { Content } from '../../../src/domain/content.ts';
import { ordersView } from '../../../src/views/orders.ts';
import { demoContent } from '../../samples/demo.ts';
import { orderContent } from './demo-orders.ts';

let content: Content;
beforeAll(async () => {
  content = await demoContent();
});

const RECIPE = 'vanilla-equal-weights';

/** The demo with so much cut off the tops of its vanilla sponges. */
const cutting = (cutMm: number): Content => ({
  ...content,
  recipes: content.recipes.map((recipe) => (recipe.id === RECIPE ? { ...recipe, levelMm: cutMm } : recipe)),
});

function birthday(from: Content): PlannedOrder {
  const order = from.orders.find(({ id }) => id === 'orange-birthday');
  const made = order === undefined ? null : planOrder(order, orderContent(from));
  if (made === null || !made.ok) throw new Error('no order');
  return made.value;
}

describe('what is cut off', () => {
  it('worked by hand: 3 mm off 65 mm in three layers, of 840 g of sponge', () => {
    // 62 mm ÷ 3 = 20.667 mm; 840 g × 3 ÷ 65 = 38.769 g; 62 ÷ 65 stays.
    expect(levelled({ bakes: 1, heightMm: 65, layers: 3, spongeG: 840 }, 3)).toEqual({
      ...{ cutMm: 3, heightMm: 62, layerMm: 20.667, offcutG: 38.769, keptShare: 62 / 65 },
      keptShare: expect.closeTo(62 / 65, 6),
    });
    // Two bakes of 60 mm are both cut: 114 mm in six layers of 19 mm.
    expect(levelled({ bakes: 2, heightMm: 60, layers: 6, spongeG: 1000 }, 3)).toMatchObject({
      ...{ heightMm: 114, layerMm: 19, offcutG: 50 },
    });
  });

  it('is nothing of a half sphere, which its tin makes flat', () => {
    expect(levelMm({ levelMm: 3 }, { shape: { kind: 'dome', acrossMm: 150 } })).toBe(0);
    expect(levelMm({}, { shape: { kind: 'round', acrossMm: 150 } })).toBe(0);
  });
});

describe('an order of a levelled cake', () => {
  it('is as much batter and as dear as before, lower, lighter, and takes less to cover', () => {
    const [whole, level] = [birthday(content), birthday(cutting(3))];
    const [before, after] = [whole.tiers[0], level.tiers[0]];
    expect(level.mixes[0]?.mix.batterG).toBe(whole.mixes[0]?.mix.batterG);
    expect(after?.finishedHeightMm).toBe(65);
    expect((before?.builtHeightMm ?? 0) - (after?.builtHeightMm ?? 0)).toBeCloseTo(3, 3);
    const coatOf = (tier: typeof before): number =>
      tier?.finishes.find(({ use }) => use === 'coating')?.amount.neededG ?? 0;
    expect(coatOf(after)).toBeLessThan(coatOf(before));
    const lighter = (before?.weightGEach ?? 0) - (after?.weightGEach ?? 0);
    expect(lighter).toBeCloseTo((after?.level.offcutG ?? 0) + coatOf(before) - coatOf(after), 2);
    const flour = (order: PlannedOrder): number =>
      order.uses.find(({ ingredientId }) => ingredientId === 'self-raising-flour')?.grams ?? 0;
    expect(flour(level)).toBe(flour(whole));
  });

  it('tells the cut, the offcuts and the layers, and labels what is left', () => {
    const order = ordersView(cutting(3)).orders.find(({ id }) => id === 'orange-birthday');
    const [tier] = order?.tiers ?? [];
    expect(tier?.level?.text).toMatch(
      /^Cut 3 mm off to level it \(\d+\u00a0g of offcuts\): layers of 20.7 mm$/,
    );
    expect(tier?.layerHeight.value).toBe(20.667);
    const plain = ordersView(content).orders.find(({ id }) => id === 'orange-birthday');
    expect(plain?.tiers[0]?.level).toBeNull();
  });
});
