/**
 * What is asked for a cost? price = cost ÷ (1 − margin), up to the next multiple of the step. In whole numbers
 * throughout, so that a price that comes out even is not pushed a step up by the dust of a division:
 * ⌈cost·10⁶ ÷ ((10⁶ − margin in millionths)·step)⌉·step.
 */
import type { Minor } from '../../domain/money.ts';

const MILLION = 1_000_000;

/** Quotient of two whole numbers, up to the next whole one. */
function upQuotient(top: number, bottom: number): number {
  const rest = top % bottom;
  return (top - rest) / bottom + (rest > 0 ? 1 : 0);
}

/**
 * The price for a cost in minor units, with the share `margin` of it left over (below 1).
 * @example priceMinor(8429, 0.2, 50) // 10550
 */
export function priceMinor(costMinor: Minor, margin: number, stepMinor: Minor): Minor {
  const kept = MILLION - Math.round(margin * MILLION);
  return upQuotient(costMinor * MILLION, kept * stepMinor) * stepMinor;
}
