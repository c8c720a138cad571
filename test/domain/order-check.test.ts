import { describe, expect, it } from 'vitest';
import type { Order } from '../../src/domain/order.ts';
import { checkedOrder, isLocalTime } from '../../src/domain/order-check.ts';

const order: Order = {
  id: 'harvest-supper',
  title: 'Three tiers for a supper',
  reference: 'R-1042',
  tiers: [
    { tinId: 'round-10', recipeId: 'vanilla', flavourIds: [], count: 1, finishes: [] },
    { tinId: 'round-6', recipeId: 'vanilla', flavourIds: ['lemon'], count: 1, layers: 3, finishes: [] },
  ],
  arrangement: 'stacked',
  travelsAssembled: true,
  handOver: { localTime: '2026-11-28T14:00', zone: 'Europe/London', place: 'delivered', minute: 29_931_240 },
  portions: { wanted: 60, size: 'finger' },
  keepsTopTier: true,
  extras: [{ name: 'Hire of a stand', count: 1, eachMinor: 1500, inedible: true, vatShare: 0.2 }],
  decisions: [{ question: 'Ribbon?', answer: null, by: '2026-11-20' }],
  notes: '',
};
const codes = (changed: Partial<Order>): string[] => {
  const result = checkedOrder({ ...order, ...changed });
  return result.ok ? [] : result.problems.map(({ code }) => code);
};

describe('checkedOrder', () => {
  it('takes a sound order as it is', () => expect(checkedOrder(order)).toEqual({ ok: true, value: order }));

  it.each(['Anna Miller', 'anna', 'ANNA', 'r-1', 'R-1042@example.org', ''])(
    "does not take '%s' for a customer's code",
    (reference) => expect(codes({ reference })).toEqual(['order-reference']),
  );

  it('tells every mistake at once', () => {
    const [tier] = order.tiers;
    if (tier === undefined) throw new Error('no tier');
    expect(
      codes({
        tiers: [{ ...tier, count: 1.5, layers: 0, finishedHeightMm: -2 }],
        handOver: { localTime: '2026-02-29T14:00', zone: 'London', place: 'collected', minute: 0 },
        portions: { wanted: 0, size: 'finger' },
        extras: [{ name: 'Topper', count: 1, eachMinor: 1.5, inedible: true }],
      }),
    ).toEqual([
      'tier-count',
      'tier-layers',
      'tier-height',
      'order-extra',
      'hand-over-time',
      'hand-over-zone',
      'portions-wanted',
      'top-tier-kept',
    ]);
  });

  it('needs a tier', () => expect(codes({ tiers: [], keepsTopTier: false })).toEqual(['order-without-cake']));
});

describe('isLocalTime', () => {
  it.each(['2024-02-29T00:00', '2026-12-31T23:59'])('%s is in the calendar', (text) => {
    expect(isLocalTime(text)).toBe(true);
  });
  it.each(['2023-02-29T12:00', '2026-11-31T12:00', '2026-13-01T12:00', '2026-11-28T24:00', '28 Nov 2 pm'])(
    '%s is not',
    (text) => expect(isLocalTime(text)).toBe(false),
  );
});
