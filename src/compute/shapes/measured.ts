/**
 * A tin known only by the water it holds: plan and perimeter unknown, and the fill is taken as even over the
 * depth, V(h) = V·h/d. A tin that flares holds less than this low down, so half fills are a little generous.
 */
import type { Measured } from '../../domain/shape.ts';
import { MM3_PER_ML } from '../../domain/units.ts';
import type { ShapeRule } from './shape-rule.ts';

const meanAreaMm2 = ({ volumeMl }: Measured, depthMm: number): number => (volumeMl * MM3_PER_ML) / depthMm;

export const measuredRule: ShapeRule<Measured> = {
  fillsEvenly: true,
  outline: () => null,
  baseOutline: () => null,
  areaMm2: () => null,
  perimeterMm: () => null,
  fillMm3: (shape, heightMm, depthMm) => meanAreaMm2(shape, depthMm) * heightMm,
  growthMm2: meanAreaMm2,
};
