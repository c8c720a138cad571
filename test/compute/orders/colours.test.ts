/** Buttercream in several colours: each has a bowl of its own, which keeps a tenth (common practice, no source). */
import { beforeAll, describe, expect, it } from 'vitest';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import type { Content } from '../../../src/domain/content.ts';
import type { FinishAsk } from '../../../src/domain/order.ts';
import { ordersView } from '../../../src/views/orders.ts';
import { demoContent } from '../../samples/demo.ts';
import { orderContent } from './demo-orders.ts';

let content: Content;
beforeAll(async () => {
  content = await demoContent();
});

const ID = 'orange-birthday';
const BUTTERCREAM = 'vanilla-buttercream';

/** The birthday cake with its coat tinted, of a buttercream that loses so much in its bowl. */
function tintedBy(colour: string | null, lossShare: number): Content {
  const finishes: FinishAsk[] = [
    { finishId: BUTTERCREAM, use: 'filling' },
    { finishId: BUTTERCREAM, use: 'coating', ...(colour === null ? {} : { colour }) },
  ];
  return {
    ...content,
    finishes: content.finishes.map((one) => (one.id === BUTTERCREAM ? { ...one, lossShare } : one)),
    orders: content.orders.map((order) =>
      order.id === ID ? { ...order, tiers: order.tiers.map((tier) => ({ ...tier, finishes })) } : order,
    ),
  };
}

function planned(from: Content): PlannedOrder {
  const order = from.orders.find(({ id }) => id === ID);
  const made = order === undefined ? null : planOrder(order, orderContent(from));
  if (made === null || !made.ok) throw new Error('no order');
  return made.value;
}

describe('a tinted coat', () => {
  it('of a buttercream that loses nothing is made with a tenth for its bowl, the untinted filling without', () => {
    const [finish] = planned(tintedBy('sage', 0)).finishes;
    const [filling, coat] = finish?.colours ?? [];
    expect([filling?.colour, coat?.colour]).toEqual([null, 'sage']);
    expect(filling?.makeG).toBeCloseTo(filling?.neededG ?? 0, 2);
    expect(coat?.makeG).toBeCloseTo((coat?.neededG ?? 0) * 1.1, 2);
    expect(finish?.makeG).toBeCloseTo((filling?.makeG ?? 0) + (coat?.makeG ?? 0), 2);
    const weighedG = (finish?.lines ?? []).reduce((sum, { grams }) => sum + grams, 0);
    expect(Math.abs(weighedG - (finish?.makeG ?? 0))).toBeLessThan(10);
  });

  it('of one that loses a tenth anyway takes no more, and without a colour nothing is told apart', () => {
    const [tinted, plain] = ['sage', null].map((colour) => planned(tintedBy(colour, 0.1)).finishes[0]);
    expect(tinted?.makeG).toBe(plain?.makeG);
    expect(tinted?.colours).toHaveLength(2);
    expect(plain?.colours).toEqual([]);
  });

  it('is told in grams by colour, and warned of: no label knows what tints it', () => {
    const order = ordersView(tintedBy('sage', 0.1)).orders.find(({ id }) => id === ID);
    expect(order?.finishes[0]?.coloursText).toMatch(
      /^Of it: [\d,]+\u00a0g untinted and [\d,]+\u00a0g sage\.$/,
    );
    expect(order?.tiers[0]?.finishes.map(({ calledText }) => calledText)).toEqual([
      'Vanilla buttercream',
      'Vanilla buttercream, sage',
    ]);
    expect(order?.warnings.map(({ code }) => code)).toContain('colour-not-labelled');
  });
});
