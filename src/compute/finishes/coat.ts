/**
 * How much goes around and on top: the solid of the grown plan up to H + t, less the cake itself.
 * V = A_t·(H + t) − A·H. The base stands on the board and is not coated.
 */
import { MM3_PER_ML } from '../../domain/units.ts';
import { offsetAreaMm2 } from './offset-area.ts';
import type { CakePlan } from './plan.ts';

/** mL, for a coat of thickness `tMm` on a cake `heightMm` high. */
export function coatMl(
  plan: CakePlan,
  heightMm: number,
  tMm: number,
  corners: 'rounded' | 'sharp' = 'rounded',
): number {
  const grown = offsetAreaMm2(plan, tMm, corners);
  return (grown * (heightMm + tMm) - plan.areaMm2 * heightMm) / MM3_PER_ML;
}

/** mL, for a coat on a dome or cap `acrossMm` wide and `heightMm` high: the cap of a sphere grown by t. */
export function domeCoatMl(acrossMm: number, heightMm: number, tMm: number): number {
  const rim = acrossMm / 2;
  const sphere = (rim * rim + heightMm * heightMm) / (2 * heightMm);
  const cap = (radius: number, high: number): number => (Math.PI * high * high * (3 * radius - high)) / 3;
  return (cap(sphere + tMm, heightMm + tMm) - cap(sphere, heightMm)) / MM3_PER_ML;
}
