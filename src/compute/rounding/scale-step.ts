/**
 * To what step is this amount weighed? The kitchen's own step (5 g, or 0.5 g for raising agents, salt and
 * spices) while half of it stays within 2 % of the amount; below that 2, 1, 0.5, 0.2, 0.1 … g. Valid from
 * 0.025 g up: the finest step is 0.001 g. Rule: common practice, no source.
 */
import type { ScaleSetting } from '../../domain/kitchen.ts';

/** Rounding moves no ingredient further than this share of itself. */
export const MOST_MOVED = 0.02;

const STEPS_G = [
  500, 200, 100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001,
] as const;
const FINEST_STEP_G = 0.001;

/** Floating noise must not push 125 g off its 5 g step. */
const SLACK = 1e-9;

const fits = (stepG: number, amountG: number): boolean => stepG / 2 <= MOST_MOVED * amountG * (1 + SLACK);

/**
 * Scale step for an amount, g.
 * @example scaleStepG(250, false, { stepG: 5, fineStepG: 0.5 }) // 5
 * @example scaleStepG(30, false, { stepG: 5, fineStepG: 0.5 }) // 1
 */
export function scaleStepG(amountG: number, fine: boolean, scale: ScaleSetting): number {
  const coarsestG = fine ? scale.fineStepG : scale.stepG;
  if (fits(coarsestG, amountG)) return coarsestG;
  return STEPS_G.find((stepG) => stepG < coarsestG && fits(stepG, amountG)) ?? FINEST_STEP_G;
}
