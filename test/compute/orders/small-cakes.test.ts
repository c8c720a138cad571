/** Cakes by the piece, worked by hand: cases and cups, full tins and the rest, toppings, portions. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { packagedPieces } from '../../../src/compute/costs/packaged-pieces.ts';
import type { OrderContent } from '../../../src/compute/orders/order-content.ts';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import { smallFill, smallTinsOf } from '../../../src/compute/orders/small-cakes.ts';
import { smallTin } from '../../../src/compute/orders/small-tin.ts';
import type { Content } from '../../../src/domain/content.ts';
import type { DummyTier, Order, SmallCakes, TierAsk } from '../../../src/domain/order.ts';
import type { Recipe } from '../../../src/domain/recipe.ts';
import { orderContent, orderNamed, plannedDemo } from './demo-orders.ts';

let content: Content;
let own: OrderContent;
let fair: Order;
beforeAll(async () => {
  const demo = await plannedDemo();
  content = demo.content;
  own = orderContent(content);
  fair = orderNamed(demo.orders, 'fair-trays').order;
});

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

const cupcakes = (pieces: number, changes: Partial<SmallCakes> = {}): TierAsk => ({
  ...{ tinId: 'muffin-12', recipeId: 'lemon-tray-sponge', flavourIds: [], count: pieces, layers: 1 },
  ...{ finishes: [], beside: 'small cakes' },
  small: {
    ...{ kind: 'cupcakes', caseG: 40, bake: { firstLookMin: 18, byMin: 22 }, box: 12 },
    toppings: [{ finishId: 'vanilla-buttercream', eachG: 30 }],
    ...changes,
  },
});

function planned(tiers: TierAsk[], changes: Partial<Order> = {}): PlannedOrder {
  const plan = planOrder({ ...fair, tiers, ...changes }, own);
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join(' '));
  return plan.value;
}

describe('thirty cupcakes of 40 g from a tin of twelve', () => {
  it('are two full tins of 480 g and one of 240 g, 1,200 g in all', () => {
    const [mix] = planned([cupcakes(30)]).mixes;
    expect(mix?.mix.tins.map(({ count, pieces, batterGEach }) => [count, pieces, batterGEach])).toEqual([
      [2, 12, 480],
      [1, 6, 240],
    ]);
    expect(mix?.mix.askedG).toBe(1200);
    expect(mix?.tierAt).toEqual([0, 0]);
    expect(mix?.mix.batterG).toBeCloseTo(1200 + (mix?.mix.surplusG ?? 0), 3);
  });

  it('are topped with 900 g, made as 990 g with a tenth left in the bowl', () => {
    const { finishes, tiers } = planned([cupcakes(30)]);
    expect(finishes.map(({ neededG, makeG }) => [neededG, makeG])).toEqual([[900, 990]]);
    expect(tiers[0]?.finishes.map(({ use, amount }) => [use, amount.neededG])).toEqual([['topping', 900]]);
  });

  it('are thirty portions, and weigh what the oven leaves of 40 g and 30 g more', () => {
    const { portions, tiers, mixes } = planned([cupcakes(30)]);
    const [tier] = tiers;
    expect(portions).toBe(30);
    // Short by less than the tolerance, every case gets a little less; over, it gets its 40 g.
    const share = Math.min(1, (mixes[0]?.mix.batterG ?? 0) / 1200);
    expect(tier?.receivesG).toBeCloseTo(40 * share, 2);
    expect(tier?.weightGEach).toBeLessThan(70);
    expect(tier?.weightGEach).toBeGreaterThan(60);
    expect(tier).toMatchObject({ boardAcrossMm: null, bake: null, layers: 1, coatedAcrossMm: 70 });
  });

  it('say that the tins are filled more often than they are owned', () => {
    expect(planned([cupcakes(30)]).warnings.map(({ message }) => message)).toContain(
      'Twelve-cup muffin tin: filled 3 times, from 2 tins. Bake in turns; cool and wash the tin between, and keep waiting batter cool.',
    );
    expect(planned([cupcakes(24)]).warnings.map(({ code }) => code)).not.toContain('tin-baked-again');
  });
});

describe('a case without a weight', () => {
  const sponge = (): Recipe => {
    const found = content.recipes.find(({ id }) => id === 'lemon-tray-sponge');
    if (found === undefined) throw new Error('no sponge');
    return found;
  };
  const cup = () => {
    const tin = smallTin(content.kitchen, 'muffin-12');
    if (tin === null) throw new Error('no muffin tin');
    return tin.cup;
  };

  it('is filled by its cup: π·32/12·(70² + 70·50 + 50²) = 91.32 mL level with the rim, × 0.4 g/mL = 36.53 g', () => {
    const recipe = { ...sponge(), finishedHeightMm: 80, allowedRiseMm: 0 };
    const fill = smallFill({}, {}, cup(), recipe, 0.4);
    expect(fill.ok && fill.value.heightMm).toBe(32);
    const ml = (Math.PI * 32 * (70 ** 2 + 70 * 50 + 50 ** 2)) / 12 / 1000;
    expect(ml).toBeCloseTo(91.32, 2);
    expect(fill.ok && fill.value.batterG).toBeCloseTo(0.4 * ml, 2);
  });

  it('goes by the asked height where there is one, and is refused over the rim', () => {
    const recipe = { ...sponge(), allowedRiseMm: 5 };
    expect(smallFill({ finishedHeightMm: 37 }, {}, cup(), recipe, 0.4).ok).toBe(true);
    const high = smallFill({ finishedHeightMm: 38 }, {}, cup(), recipe, 0.4);
    expect(high.ok ? [] : high.problems.map(({ code }) => code)).toEqual(['height-over-rim']);
  });

  it('with a weight stands as high as its batter makes it, and is warned of only when it runs over raw', () => {
    const recipe = { ...sponge(), rawDensityGPerMl: 0.8 };
    // 40 g ÷ 0.4 = 100 mL: 91.32 mL to the rim and 8.68 mL above it on π·35² mm², 2.26 mm.
    const full = smallFill({}, { caseG: 40 }, cup(), recipe, 0.4);
    expect(full.ok && full.value.heightMm).toBeCloseTo(34.26, 1);
    expect(full.ok && full.value.warnings).toEqual([]);
    // 90 g ÷ 0.8 = 112.5 mL raw in a cup of 91.32 mL.
    const over = smallFill({}, { caseG: 90 }, cup(), recipe, 0.4);
    expect(over.ok && over.value.warnings.map(({ code }) => code)).toEqual(['fill-over-brim']);
  });
});

describe('small cakes beside cakes', () => {
  it('share one mix with a tray of the same batter, its eggs whole once', () => {
    const [tray] = fair.tiers;
    if (tray === undefined) throw new Error('no tray');
    const { mixes } = planned([{ ...tray, finishedHeightMm: 20 }, cupcakes(12)]);
    expect(mixes).toHaveLength(1);
    expect(mixes[0]?.mix.loads).toHaveLength(1);
    expect(mixes[0]?.tierAt).toEqual([0, 1]);
    expect(Number.isInteger(mixes[0]?.mix.eggs?.whole)).toBe(true);
  });

  it('bake in an ordinary small tin as in a tin of one cup', () => {
    const { mixes } = planned([{ ...cupcakes(6), tinId: 'round-4' }]);
    expect(mixes[0]?.mix.tins.map(({ count, pieces, batterGEach }) => [count, pieces, batterGEach])).toEqual([
      [6, 1, 40],
    ]);
    expect(smallTinsOf({ tinId: 'round-4', count: 6 }, content.kitchen)).toMatchObject({ cups: 1, tins: 6 });
  });

  it('conserve mass whatever is asked: Σ bowls = pieces × case + surplus, each piece in one tin, eggs whole', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 20, max: 60 }), (pieces, caseG) => {
        const { mixes, tiers } = planned([cupcakes(pieces, { caseG, toppings: [] })]);
        const mix = mixes[0]?.mix;
        if (mix === undefined) throw new Error('no mix');
        expect(sum(mix.tins.map(({ count, pieces: own = 0 }) => count * own))).toBe(pieces);
        expect(sum(mix.loads.map(({ batterG }) => batterG))).toBeCloseTo(pieces * caseG + mix.surplusG, 2);
        for (const load of mix.loads)
          for (const part of load.eggs?.parts ?? []) expect(Number.isInteger(part.whole)).toBe(true);
        expect(tiers[0]?.receivesG).toBeLessThanOrEqual(caseG + 0.001);
      }),
      { numRuns: 25 },
    );
  });
});

describe('boxes and boards', () => {
  it('counts 30 cupcakes in three boxes of 12, two cakes, a cutting cake among the cakes, and a dummy on its card', () => {
    const { beside: _beside, small: _small, ...cake } = cupcakes(1);
    const dummy: DummyTier = {
      ...{ at: 1, form: { shape: { kind: 'round', acrossMm: 100 }, depthMm: 100 }, unit: 'mm' },
      ...{ finishes: [], supply: 'bought', eachMinor: 320 },
    };
    const tiers: TierAsk[] = [
      cake,
      { ...cake, beside: 'cutting cake' },
      cupcakes(30),
      cupcakes(13, { box: 6 }),
    ];
    expect(packagedPieces({ tiers, dummies: [dummy] })).toEqual({
      ...{ order: 1, cake: 3, 'cutting cake': 1, 'small cake': 43 },
      ...{ 'box of 6': 3, 'box of 12': 3, 'box of 24': 0 },
    });
  });

  it('keeps the top tier, never the cutting cake or the cupcakes', () => {
    const [first, second] = fair.tiers;
    if (first === undefined || second === undefined) throw new Error('too few');
    const cutting: TierAsk = { ...second, beside: 'cutting cake' };
    const all = planned([first, second, cutting, cupcakes(12)], { arrangement: 'stacked' });
    const kept = planned([first, second, cutting, cupcakes(12)], {
      arrangement: 'stacked',
      keepsTopTier: true,
    });
    expect(all.portions - kept.portions).toBe(all.tiers[1]?.portionsEach);
    // Only the stack has a height.
    const heights = all.tiers.slice(0, 2).map(({ coatedHeightMm }) => coatedHeightMm);
    expect(all.heightMm).toBeCloseTo(sum(heights), 3);
  });
});
