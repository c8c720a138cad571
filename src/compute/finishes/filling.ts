/**
 * What goes between n layers: (n − 1)·area·thickness. A piped dam of round bead b takes its band of width b
 * off the filling area, and itself needs perimeter·b²·π/4 a joint.
 */
import { MM3_PER_ML } from '../../domain/units.ts';
import type { CakePlan } from './plan.ts';

export interface FillingAmounts {
  fillingMl: number;
  damMl: number;
}

/**
 * Volumes for all joints of a cake, mL.
 * @param damMm bead of the dam; 0 for none. A bead too wide for the plan leaves no filling, never less than 0.
 */
export function fillingAmounts(
  plan: CakePlan,
  layers: number,
  thicknessMm: number,
  damMm: number,
): FillingAmounts {
  const joints = Math.max(0, layers - 1);
  // The middle of the band lies b/2 inside the wall, where the line round is π·b shorter on a convex plan.
  const band = damMm === 0 ? 0 : plan.perimeterMm * damMm - Math.PI * damMm * damMm;
  const inside = Math.max(0, plan.areaMm2 - band);
  const beadLength = Math.max(0, plan.perimeterMm - Math.PI * damMm);
  return {
    fillingMl: (joints * inside * thicknessMm) / MM3_PER_ML,
    damMl: (joints * beadLength * damMm * damMm * Math.PI) / 4 / MM3_PER_ML,
  };
}
