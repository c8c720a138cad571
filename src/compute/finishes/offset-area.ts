/**
 * Area of the plan grown by t all round. Convex: A + P·t + π·t² (Steiner's formula for parallel bodies), and
 * with sharp corners A + P·t + t²·Σ tan(φ/2) over the exterior angles φ. Not convex (heart, petal, numerals,
 * rings): the outline itself is grown with a polygon library.
 */

import { grownAreaMm2 } from './grown-area.ts';
import type { CakePlan } from './plan.ts';

/** What t² is multiplied by for all corners together: π when they are round. */
export function cornerFactor(plan: Pick<CakePlan, 'corners'>, corners: 'rounded' | 'sharp'): number {
  if (corners === 'rounded') return Math.PI;
  const turned = plan.corners.reduce((sum, angle) => sum + angle, 0);
  const kites = plan.corners.reduce((sum, angle) => sum + Math.tan(angle / 2), 0);
  // What does not turn at corners turns along curves, which stay round: together 2π.
  return kites + Math.max(0, 2 * Math.PI - turned) / 2;
}

/** mm², for a coat of thickness `tMm` (≥ 0). */
export function offsetAreaMm2(plan: CakePlan, tMm: number, corners: 'rounded' | 'sharp' = 'rounded'): number {
  if (tMm === 0) return plan.areaMm2;
  if (!plan.convex) return grownAreaMm2(plan.rings, tMm);
  return plan.areaMm2 + plan.perimeterMm * tMm + cornerFactor(plan, corners) * tMm * tMm;
}
