/**
 * Which tier may stand on which? The upper one, with half the step left free all round, must lie wholly on the
 * lower one: a square on a round needs room for its corners. Both stand centred, the way they are drawn.
 * A step of 50 mm across (two inches): common practice, no source.
 */
import { areaPaths, difference, FillRule } from 'clipper2-ts';
import { grownPaths, PER_MM, wholePaths } from '../finishes/grown-area.ts';
import type { CakePlan } from '../finishes/plan.ts';

export const TIER_STEP_MM = 50;

/** Flattened curves may overhang by this much without being an overhang, mm². */
const SLACK_MM2 = 2;

export type Standing = Pick<CakePlan, 'rings' | 'widthMm' | 'heightMm'>;

/** Whether `upper` stands on `lower` with `stepMm` (≥ 0) to spare across, mm. */
export function tierStands(upper: Standing, lower: Standing, stepMm: number = TIER_STEP_MM): boolean {
  const spare = 1e-6;
  if (upper.widthMm + stepMm > lower.widthMm + spare) return false;
  if (upper.heightMm + stepMm > lower.heightMm + spare) return false;
  const grown = stepMm === 0 ? wholePaths(upper.rings) : grownPaths(upper.rings, stepMm / 2);
  const over = difference(grown, wholePaths(lower.rings), FillRule.EvenOdd);
  return Math.abs(areaPaths(over)) / (PER_MM * PER_MM) < SLACK_MM2;
}
