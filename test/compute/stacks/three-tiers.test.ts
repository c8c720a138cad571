/**
 * The demo's three tiers from the table up, worked by hand from the content alone: sponge of 65 mm in three layers,
 * two fillings (3 mm of jam; 8 mm of buttercream), coats of 2 and 6 mm, sugarpaste of 4 mm; 1.05 and 1.40 g/mL; a
 * drum of 12 mm and cards of 3 mm (common practice, no source).
 */
import { expect, it } from 'vitest';
import { orderStack } from '../../../src/compute/orders/order-stack.ts';
import { orderNamed, plannedDemo } from '../orders/demo-orders.ts';

it('three tiers stand 287 mm high, and weigh what is in and on them', async () => {
  const { content, orders } = await plannedDemo();
  const planned = orderNamed(orders, 'three-tiers-for-sixty');
  const stack = orderStack(planned, content.finishing);
  if (stack === null || stack === 'unknown-width') throw new Error('no stack');
  // 65 + 2 × 3 + 2 + 6 + 4 = 83; 65 + 2 × 8 + 12 = 93.
  expect(planned.tiers.map(({ coatedHeightMm }) => coatedHeightMm)).toEqual([83, 93, 93]);
  // 12 + 83 = 95; + 3 = 98, + 93 = 191; + 3 = 194, + 93 = 287; dowel 287 − 12 − 25.
  expect(stack.tiers.map(({ footMm, topMm }) => [footMm, topMm])).toEqual([
    [12, 95],
    [98, 191],
    [194, 287],
  ]);
  expect(stack.dowel).toEqual({ lengthMm: 250 });
  // 10, 8 and 6 in with 12 mm on each side: a drum of 278 + 75 mm, up to 14 in; cards of 227.2 and 176.4 mm.
  expect(stack.tiers.map(({ board }) => board.acrossMm)).toEqual([355.6, 227.2, 176.4]);
  expect(stack.tiers.map(({ supports }) => supports?.lengthMm)).toEqual([83, 93, undefined]);

  // Middle tier, radius 101.6 mm. Filling: 2 × 8 × π · 101.6² = 518.9 mL, 544.8 g. Coats of 8 mm over 81 mm:
  // π (109.6² − 101.6²) · 81 + π · 109.6² · 8 = 731.9 mL, 768.4 g. Sheet over 109.6 mm, 89 mm high:
  // (π · 109.6² + 2 π · 109.6 · 89) · 4 = 396.1 mL, 554.5 g.
  const middle = planned.tiers[1];
  expect(middle?.finishes.map(({ amount }) => amount.neededG)).toEqual(
    [544.8, 768.4, 554.5].map((grams) => expect.closeTo(grams, 0)),
  );
  const spongeG = (middle?.weightGEach ?? 0) - (544.8 + 768.4 + 554.5);
  // What leaves a creamed sponge as steam: about a tenth.
  expect(spongeG / (middle?.receivesG ?? 0)).toBeCloseTo(0.9, 1);
  const [bottom, , top] = stack.tiers;
  expect(bottom?.carriesG).toBeCloseTo((middle?.weightGEach ?? 0) + (top?.weightG ?? 0), 3);
  expect(stack.totalWeightG).toBeCloseTo((bottom?.weightG ?? 0) + (bottom?.carriesG ?? 0), 3);
});
