/** A tin whose walls stand upright: volume = plan area × height, and the base is the plan. */
import type { Outline } from '../../domain/outline.ts';
import type { ShapeRule } from './shape-rule.ts';

export interface Plan<S> {
  outline(shape: S): Outline;
  areaMm2(shape: S): number;
  perimeterMm(shape: S): number;
}

/** The full rule for a plan with upright walls. */
export function straightWalls<S>(plan: Plan<S>): ShapeRule<S> {
  return {
    ...plan,
    fillsEvenly: true,
    baseOutline: () => null,
    fillMm3: (shape, heightMm) => plan.areaMm2(shape) * heightMm,
    growthMm2: plan.areaMm2,
  };
}
