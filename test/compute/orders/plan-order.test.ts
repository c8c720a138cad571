import { beforeAll, describe, expect, it } from 'vitest';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import type { Content } from '../../../src/domain/content.ts';
import type { Order } from '../../../src/domain/order.ts';
import { orderContent, orderNamed, plannedDemo } from './demo-orders.ts';

let content: Content;
let orders: PlannedOrder[];
beforeAll(async () => {
  ({ content, orders } = await plannedDemo());
});

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

describe('every planned order of the demo', () => {
  it('conserves mass: Σ mixes = Σ cakes × batter asked + declared surplus, and Σ loads = Σ mixes', () => {
    for (const { mixes } of orders) {
      for (const { mix } of mixes) {
        const asked = sum(mix.tins.map(({ count, batterGEach }) => count * batterGEach));
        expect(mix.batterG).toBeCloseTo(asked + mix.surplusG, 2);
        expect(sum(mix.loads.map(({ batterG }) => batterG))).toBeCloseTo(mix.batterG, 3);
        expect(sum(mix.lines.map(({ grams }) => grams))).toBeCloseTo(mix.batterG, 3);
      }
    }
  });

  it('gives every tier its batter from exactly one mix, and every mix tin its tier', () => {
    for (const { mixes, tiers } of orders) {
      expect([...new Set(mixes.flatMap(({ tierAt }) => tierAt))].sort()).toEqual(tiers.map(({ at }) => at));
      for (const tier of tiers) {
        const own = mixes[tier.mixAt]?.mix.tins.filter(
          (_, tin) => mixes[tier.mixAt]?.tierAt[tin] === tier.at,
        );
        expect(new Set(own?.map(({ tin }) => tin.id))).toEqual(new Set([tier.tin.id]));
        expect(sum((own ?? []).map(({ count, pieces = 1 }) => count * pieces))).toBe(tier.count);
      }
    }
  });

  it('cracks whole eggs in every load', () => {
    for (const load of orders.flatMap(({ mixes }) => mixes.flatMap(({ mix }) => mix.loads)))
      for (const part of load.eggs?.parts ?? []) expect(Number.isInteger(part.whole)).toBe(true);
  });

  it('makes of each finish what its tiers need and the loss besides, parts and whole', () => {
    for (const { tiers, dummies, finishes } of orders) {
      for (const { finish, neededG, makeG, lines } of finishes) {
        const own = [...tiers, ...dummies]
          .flatMap((tier) => tier.finishes)
          .filter((one) => one.finish.id === finish.id);
        expect(neededG).toBeCloseTo(sum(own.map(({ amount }) => amount.neededG)), 2);
        expect(makeG).toBeGreaterThanOrEqual(neededG);
        const inG = makeG / (1 - finish.cookingLossShare);
        expect(Math.abs(sum(lines.map(({ grams }) => grams)) - inG)).toBeLessThanOrEqual(0.02 * inG + 5);
      }
    }
  });

  it('uses as much of each ingredient as goes into its bowls and pans', () => {
    for (const { mixes, finishes, uses } of orders) {
      const weighed = [...mixes.flatMap(({ mix }) => mix.lines), ...finishes.flatMap(({ lines }) => lines)];
      for (const { ingredientId, grams } of uses) {
        const own = weighed.filter((line) => line.ingredientId === ingredientId);
        expect(grams).toBeCloseTo(sum(own.map((line) => line.grams)), 3);
      }
      expect(new Set(uses.map(({ ingredientId }) => ingredientId))).toEqual(
        new Set(weighed.map(({ ingredientId }) => ingredientId)),
      );
    }
  });

  it('cuts into as many portions as are wanted', () => {
    for (const { portionsOver } of orders) expect(portionsOver).toBeGreaterThanOrEqual(0);
  });
});

describe('three tiers for sixty', () => {
  it('mixes the orange tiers together and the plain one alone', () => {
    const { mixes } = orderNamed(orders, 'three-tiers-for-sixty');
    expect(mixes.map(({ flavours, tierAt }) => [flavours.map(({ id }) => id), tierAt])).toEqual([
      [[], [0]],
      [['orange'], [1, 2]],
    ]);
  });

  it('does not count the top tier that is kept', () => {
    const { tiers, portions } = orderNamed(orders, 'three-tiers-for-sixty');
    expect(portions).toBe((tiers[0]?.portionsEach ?? 0) + (tiers[1]?.portionsEach ?? 0));
  });

  it('builds 65 mm of sponge with two 8 mm fillings to 81 mm, coats 8 mm and covers 4 mm: 93 mm, by hand', () => {
    const tier = orderNamed(orders, 'three-tiers-for-sixty').tiers[1];
    expect(tier).toMatchObject({ finishedHeightMm: 65, builtHeightMm: 81, coatedHeightMm: 93 });
    // 203.2 + 2 × 12
    expect(tier?.coatedAcrossMm).toBeCloseTo(227.2, 3);
  });

  it('coats the 8 inch round to 768.4 g, by hand', () => {
    // A_t = π·109.6² = 37 737.4; × 89 − π·101.6² × 81 (32 429.3 × 81) = 731.85 mL; × 1.05 g/mL
    const coat = orderNamed(orders, 'three-tiers-for-sixty').tiers[1]?.finishes.find(
      ({ use }) => use === 'coating',
    );
    const ml = (Math.PI * 109.6 ** 2 * 89 - Math.PI * 101.6 ** 2 * 81) / 1000;
    expect(coat?.amount.neededMl).toBeCloseTo(ml, 2);
    expect(coat?.amount.neededG).toBeCloseTo(ml * 1.05, 2);
  });

  it('rolls the sheet for the coated cake: 219.2 + 2 × 89 + 2 × 25 = 447.2 mm across, by hand', () => {
    const sheet = orderNamed(orders, 'three-tiers-for-sixty').tiers[1]?.finishes.find(
      ({ use }) => use === 'rolled',
    );
    expect(sheet?.amount.sheet?.acrossMm).toBeCloseTo(447.2, 2);
  });

  it('pipes a dam of the tier’s own buttercream round the jam only', () => {
    const dams = orderNamed(orders, 'three-tiers-for-sixty').tiers.map(({ finishes }) =>
      finishes.filter(({ use }) => use === 'dam').map(({ finish }) => finish.id),
    );
    expect(dams).toEqual([['vanilla-buttercream'], [], []]);
  });
});

describe('an order that asks much', () => {
  const change = (order: Order, tier: Partial<Order['tiers'][number]>): Order => ({
    ...order,
    tiers: order.tiers.map((own) => ({ ...own, ...tier })),
  });

  it('says that a tin is baked again', () => {
    const { order } = orderNamed(orders, 'orange-birthday');
    const planned = planOrder(change(order, { count: 5 }), orderContent(content));
    expect(planned.ok && planned.value.warnings.map(({ code }) => code)).toContain('tin-baked-again');
  });

  it('splits into loads that the bowl takes, eggs whole in each', () => {
    const { order } = orderNamed(orders, 'orange-birthday');
    const planned = planOrder(change(order, { count: 5 }), orderContent(content));
    const mix = planned.ok ? planned.value.mixes[0]?.mix : undefined;
    expect(mix?.loads.length).toBeGreaterThan(1);
    const codes = planned.ok ? planned.value.warnings.map(({ code }) => code) : [];
    expect(codes.filter((code) => ['second-bake', 'tin-baked-again'].includes(code))).toEqual([
      'tin-baked-again',
    ]);
  });

  it('says when the portions fall short', () => {
    const { order } = orderNamed(orders, 'orange-birthday');
    const planned = planOrder({ ...order, portions: { wanted: 90, size: 'dessert' } }, orderContent(content));
    expect(planned.ok && planned.value.portionsOver).toBe(24 - 90);
    expect(planned.ok && planned.value.warnings.map(({ code }) => code)).toContain('portions-short');
  });

  it('never asks for less batter when a tin is added', () => {
    const { order } = orderNamed(orders, 'orange-birthday');
    let before = 0;
    for (let count = 1; count <= 6; count += 1) {
      const planned = planOrder(change(order, { count }), orderContent(content));
      const askedG = planned.ok ? (planned.value.mixes[0]?.mix.askedG ?? 0) : 0;
      expect(askedG).toBeGreaterThan(before);
      before = askedG;
    }
  });
});
