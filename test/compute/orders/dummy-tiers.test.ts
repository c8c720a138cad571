/** Tiers of polystyrene, worked by hand: weight, stack, cost, work; and that nothing of them is baked or labelled. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { OrderContent } from '../../../src/compute/orders/order-content.ts';
import { type OrderStack, orderStack } from '../../../src/compute/orders/order-stack.ts';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import { orderWork } from '../../../src/compute/orders/work-of.ts';
import { materialsOf, shoppingList } from '../../../src/compute/shopping/shopping-list.ts';
import { boreStages, orderStages, tierStages } from '../../../src/compute/timeline/process.ts';
import type { Content } from '../../../src/domain/content.ts';
import type { DummyTier, Order } from '../../../src/domain/order.ts';
import { dummyCosts, dummyHires } from '../../../src/views/order-dummies.ts';
import { orderContent, orderNamed, plannedDemo } from './demo-orders.ts';

let content: Content;
let own: OrderContent;
let order: Order;
let demo: PlannedOrder;
beforeAll(async () => {
  const all = await plannedDemo();
  content = all.content;
  own = orderContent(content);
  demo = orderNamed(all.orders, 'square-and-round');
  order = demo.order;
});

const dummyAt = (at: number, acrossMm: number, changes: Partial<DummyTier> = {}): DummyTier => ({
  ...{ at, form: { shape: { kind: 'round', acrossMm }, depthMm: 76.2 }, unit: 'in' },
  ...{
    finishes: [{ finishId: 'dark-ganache', use: 'coating' }],
    supply: 'hired',
    eachMinor: 600,
    vatShare: 0.2,
  },
  ...changes,
});

function planned(dummies: DummyTier[], changes: Partial<Order> = {}): PlannedOrder {
  const plan = planOrder({ ...order, dummies, ...changes }, own);
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join(' '));
  return plan.value;
}

function stackOfPlan(plan: PlannedOrder): OrderStack {
  const stack = orderStack(plan, content.finishing);
  if (stack === null || stack === 'unknown-width') throw new Error('no stack');
  return stack;
}

describe('a four-inch dummy three inches high in 8 mm of ganache', () => {
  it('weighs 15.4 g of polystyrene and 338.3 g of ganache', () => {
    const [dummy] = demo.dummies;
    // π·50.8²·76.2 = 617.8 mL × 0.025 g/mL; sharp edges: π·58.8²·84.2 − π·50.8²·76.2 = 296.8 mL × 1.14 g/mL.
    const foamMl = (Math.PI * 50.8 ** 2 * 76.2) / 1000;
    const coatMl = (Math.PI * 58.8 ** 2 * 84.2) / 1000 - foamMl;
    expect(dummy?.weightGEach).toBeCloseTo(foamMl * 0.025 + coatMl * 1.14, 1);
    expect(dummy).toMatchObject({ builtHeightMm: 76.2, coatedHeightMm: 84.2 });
    expect(dummy?.coatedAcrossMm).toBeCloseTo(117.6, 3);
  });

  it('takes ganache and nothing else: the same batter, eggs and portions as without it', () => {
    const without = planned([]);
    expect(demo.mixes.map(({ mix }) => mix.batterG)).toEqual(without.mixes.map(({ mix }) => mix.batterG));
    expect(demo.portions).toBe(without.portions);
    expect(demo.tiers).toEqual(without.tiers);
    const ganache = (plan: PlannedOrder): number => plan.finishes[0]?.neededG ?? 0;
    expect(ganache(demo) - ganache(without)).toBeCloseTo(338.3, 0);
  });

  it('stands on three supports of the tier below and carries nothing', () => {
    const { tiers, parts } = stackOfPlan(demo);
    expect(parts.map((part) => part.tin.id)).toEqual(['square-8', 'round-6', 'dummy-1']);
    expect(tiers.map(({ supports }) => supports?.count ?? null)).toEqual([4, 3, null]);
    expect(tiers[1]?.supports?.carriesG).toBeCloseTo(demo.dummies[0]?.weightGEach ?? 0, 3);
    expect(tiers[2]?.carriesG).toBeNull();
  });

  it('counts in height and weight, and not in what is baked', () => {
    const cakes = planned([]);
    expect(demo.heightMm - cakes.heightMm).toBeCloseTo(84.2, 3);
    expect(demo.weightG - cakes.weightG).toBeCloseTo(demo.dummies[0]?.weightGEach ?? 0, 3);
  });
});

describe('a dummy below cake', () => {
  it('at the bottom has the drum, no supports and no card inside however tall, and carries all the cake', () => {
    const tall = dummyAt(0, 254, { form: { shape: { kind: 'round', acrossMm: 254 }, depthMm: 200 } });
    const plan = planned([tall]);
    const stack = stackOfPlan(plan);
    const [dummy, square, round] = stack.tiers;
    expect(dummy).toMatchObject({ supports: null, innerBoardMm: null, innerSupports: null, footMm: 12 });
    expect(dummy?.carriesG).toBeCloseTo(
      (plan.tiers[0]?.weightGEach ?? 0) + (plan.tiers[1]?.weightGEach ?? 0),
      2,
    );
    expect(square?.supports?.count).toBe(4);
    expect(round?.supports).toBeNull();
    // 12 + 208 + 3 = 223.
    expect(square?.footMm).toBeCloseTo(223, 3);
    expect(stack.dowel).not.toBeNull();
  });

  it('between two cakes separates them, each on its own card', () => {
    const { tiers } = stackOfPlan(planned([dummyAt(1, 180)]));
    expect(tiers.map(({ supports }) => supports !== null)).toEqual([true, false, false]);
  });
});

describe('its supply', () => {
  it('bought is a thing on the shopping list and a cost of the baker’s, no ingredient', () => {
    const plan = planned([dummyAt(2, 101.6, { supply: 'bought', eachMinor: 320 })]);
    const list = shoppingList(plan.uses, [], content.ingredients, materialsOf([plan]));
    const none = shoppingList(plan.uses, [], content.ingredients);
    expect(list.boughtMinor - none.boughtMinor).toBe(320);
    expect(list.usedMinor).toBe(none.usedMinor);
    expect(list.lines.at(-1)).toMatchObject({ unit: 'pieces', needed: 1, missing: 1, boughtMinor: 320 });
    expect(list.unpricedIds).toEqual(none.unpricedIds);
    expect(dummyCosts(plan, content)).toEqual([
      { name: 'Dummy tier, round 4 × 3 in', eachMinor: 320, count: 1 },
    ]);
    expect(dummyHires(plan, content)).toEqual([]);
  });

  it('hired is a line of the quote with VAT of its own, and nothing to buy', () => {
    expect(materialsOf([demo])).toEqual([]);
    expect(dummyCosts(demo, content)).toEqual([]);
    expect(dummyHires(demo, content)).toEqual([
      {
        name: 'Hire of a dummy tier, round 4 × 3 in',
        count: 1,
        eachMinor: 600,
        inedible: true,
        comesBack: true,
        vatShare: 0.2,
      },
    ]);
  });
});

describe('its work', () => {
  it('is covered and stacked like cake, never mixed, baked or wrapped', () => {
    const work = orderWork(demo);
    const [dummy] = work.dummies ?? [];
    if (dummy === undefined) throw new Error('no dummy');
    expect(work.tiers.map(({ id }) => id)).toEqual(['tier-1', 'tier-2', 'tier-3']);
    expect(tierStages(dummy, content.times).map(({ kind }) => kind)).toEqual(['crumb-coat', 'final-coat']);
    // Three tiers stand, the dummy among them and the cutting cake not: two joints.
    const [cutting, stacking] = orderStages(work, content.times);
    // The two cakes carry, the dummy on top does not; the dowel is the third: two cards and the dummy are bored for it.
    expect(cutting).toMatchObject({ kind: 'cut-supports', minutes: 3 * 10 });
    expect(boreStages(work, content.times)).toMatchObject([{ kind: 'bore-holes', minutes: 3 * 5 }]);
    expect(stacking).toMatchObject({ kind: 'stack', minutes: 2 * content.times.stackMin });
  });
});
