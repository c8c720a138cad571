/** A cake taller than its tin bakes at one go: several bakes of the tin, and everything after them in agreement. */
import { beforeAll, describe, expect, it } from 'vitest';
import { effortOf } from '../../../src/compute/costs/order-effort.ts';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import { tierBakes, tierLayers } from '../../../src/compute/orders/tier-bakes.ts';
import { mixesOfOrder, workOf } from '../../../src/compute/orders/work-of.ts';
import { planWeek } from '../../../src/compute/timeline/plan-week.ts';
import type { Content } from '../../../src/domain/content.ts';
import type { Order, TierAsk } from '../../../src/domain/order.ts';
import { demoContent } from '../../samples/demo.ts';
import { planFaults } from '../timeline/checker/plan-faults.ts';
import { orderContent } from './demo-orders.ts';

let content: Content;
beforeAll(async () => {
  content = await demoContent();
});

/** The birthday cake of the demo with its one tier changed, in a kitchen that owns so many of its tin. */
function planned(change: Partial<TierAsk>, owned = 2): PlannedOrder {
  const order = content.orders.find(({ id }) => id === 'orange-birthday');
  if (order === undefined) throw new Error('no order');
  const { layers: _, ...tier } = order.tiers[0] as TierAsk;
  const asked: Order = { ...order, tiers: [{ ...tier, ...change }] };
  const tins = content.kitchen.tins.map((tin) => (tin.id === tier.tinId ? { ...tin, owned } : tin));
  const made = planOrder(asked, orderContent({ ...content, kitchen: { ...content.kitchen, tins } }));
  if (!made.ok) throw new Error(made.problems.map(({ message }) => message).join(' '));
  return made.value;
}

describe('how many bakes', () => {
  // Worked by hand: a tin of 3 in (76.2 mm) whose cake may stand 5 mm above the rim bakes 81.2 mm at the most.
  const tin = { shape: { kind: 'round' as const, acrossMm: 203.2 }, depthMm: 76.2 };
  const full = { ...tin, id: 'round-8', name: 'Round', owned: 1, unit: 'in' as const };
  const recipe = { finishedHeightMm: 65, allowedRiseMm: 5, layers: 3 };

  it.each([
    [65, 1, 65],
    [81.2, 1, 81.2],
    [82, 2, 41],
    [120, 2, 60],
    [162.4, 2, 81.2],
    [163, 3, 54.333],
  ])('%s mm: %i of %s mm', (heightMm, bakes, eachMm) => {
    expect(tierBakes({ finishedHeightMm: heightMm }, full, recipe)).toEqual({ bakes, heightMm: eachMm });
  });

  it('as the order says it, one deep or two shallow; a half sphere is never stacked on its like', () => {
    expect(tierBakes({ bakes: 2 }, full, recipe)).toEqual({ bakes: 2, heightMm: 32.5 });
    expect(tierBakes({ bakes: 1, finishedHeightMm: 120 }, full, recipe)).toEqual({ bakes: 1, heightMm: 120 });
    const dome = { ...full, shape: { kind: 'dome' as const, acrossMm: 152.4 } };
    expect(tierBakes({ finishedHeightMm: 200 }, dome, recipe).bakes).toBe(1);
  });

  it('layers as thick as the recipe’s: 65 mm in three is 21.7 mm, so three from each 60 mm, six in all', () => {
    expect(tierLayers({}, { bakes: 2, heightMm: 60 }, recipe)).toBe(6);
    expect(tierLayers({ layers: 4 }, { bakes: 2, heightMm: 60 }, recipe)).toBe(4);
    expect(tierLayers({}, { bakes: 2, heightMm: 32.5 }, recipe)).toBe(4);
    expect(tierLayers({}, { bakes: 1, heightMm: 65 }, recipe)).toBe(3);
  });
});

describe('a cake of 120 mm from a three-inch tin', () => {
  it('takes twice the batter of 60 mm, weighs as much and is filled five times', () => {
    const [tall, two] = [planned({ finishedHeightMm: 120 }), planned({ finishedHeightMm: 60, count: 2 })];
    const [tier, half] = [tall.tiers[0], two.tiers[0]];
    expect(tall.mixes[0]?.mix.tins[0]).toMatchObject({ count: 2, finishedHeightMm: 60 });
    expect(tall.mixes[0]?.mix.batterG).toBe(two.mixes[0]?.mix.batterG);
    expect(tall.mixes[0]?.mix.eggs?.whole).toBe(two.mixes[0]?.mix.eggs?.whole);
    expect(tier).toMatchObject({ bakes: 2, bakeHeightMm: 60, finishedHeightMm: 120, layers: 6, count: 1 });
    expect(tier?.receivesG).toBe(half?.receivesG);
    // Filling of 8 mm between six layers: 120 + 5 × 8 mm of cake, before the coats of 8 mm.
    expect(tier?.builtHeightMm).toBe(160);
    // Each bake is looked at as 60 mm high, not as 120.
    expect(tier?.bake?.window).toEqual(half?.bake?.window);
    const onCakeG = (tier?.finishes ?? []).reduce((sum, { amount }) => sum + amount.neededG, 0);
    const lossShare = 1 - ((half?.weightGEach ?? 0) - onOne(half)) / (half?.receivesG ?? 1);
    expect(tier?.weightGEach).toBeCloseTo(2 * (half?.receivesG ?? 0) * (1 - lossShare) + onCakeG, 1);
    expect(tall.warnings.find(({ code }) => code === 'several-bakes')?.message).toBe(
      'Eight-inch round: 120 mm is more than it bakes in one go (81 mm), so 2 bakes of 60 mm make one cake.',
    );
    expect(planned({ finishedHeightMm: 120, bakes: 2 }).warnings.map(({ code }) => code)).not.toContain(
      'several-bakes',
    );
  });

  const onOne = (tier: PlannedOrder['tiers'][number] | undefined): number =>
    (tier?.finishes ?? []).reduce((sum, { amount }) => sum + amount.neededG, 0) / (tier?.count ?? 1);

  it('is one load with two tins owned and two loads with one, cooled and washed between; levelled twice, coated once', () => {
    const week = content.weeks.find(({ orderIds }) => orderIds.includes('orange-birthday'));
    if (week === undefined) throw new Error('no week');
    const room = { work: content.work, times: content.times, calendar: week.calendar };
    for (const [owned, loads] of [
      [2, 1],
      [1, 2],
    ] as const) {
      const order = planned({ finishedHeightMm: 120 }, owned);
      const work = workOf([order], mixesOfOrder(order));
      const plan = planWeek(work, room);
      if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join(' '));
      expect(planFaults(work, room, plan.value)).toEqual([]);
      expect(plan.value.loads).toHaveLength(loads);
      expect(plan.value.loads.flatMap(({ tins }) => tins)).toHaveLength(2);
      const minutesOf = (kind: string): number =>
        plan.value.steps
          .filter((step) => step.kind === kind)
          .reduce((sum, { from, to }) => sum + to - from, 0);
      // Levelling 5 minutes for each bake, 5 for each of six layers; one first coat of 15 minutes.
      expect([minutesOf('build'), minutesOf('crumb-coat')]).toEqual([2 * 5 + 6 * 5, 15]);
      const { jobs } = effortOf(work, room);
      expect(jobs.find(({ kind }) => kind === 'fill-tins')?.count).toBe(2);
      expect(jobs.find(({ kind }) => kind === 'build')?.count).toBe(1);
      expect(order.warnings.some(({ code }) => code === 'tin-baked-again')).toBe(owned === 1);
    }
  });
});
