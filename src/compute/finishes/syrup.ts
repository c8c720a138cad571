/** Syrup brushed on: every layer is brushed on one face. g = n·area·g/cm². Common practice, no source. */
import type { CakePlan } from './plan.ts';

const MM2_PER_CM2 = 100;

/** g of syrup for a cake of `layers` layers at `gPerCm2`. */
export function syrupG(plan: CakePlan, layers: number, gPerCm2: number): number {
  return (layers * plan.areaMm2 * gPerCm2) / MM2_PER_CM2;
}
