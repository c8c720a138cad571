/** A ribbon goes round the outside only: the wall of the coated plan without its holes. */
import { isPositive, type Path64 } from 'clipper2-ts';
import { ringLength } from '../outline/ring-length.ts';
import { grownPaths, PER_MM } from './grown-area.ts';
import type { CakePlan } from './plan.ts';

/** Length of a closed path from the polygon library, mm. */
export const pathLengthMm = (path: Path64): number => ringLength(path) / PER_MM;

/** mm round the outside once a coat of `tMm` is on. */
export function outsideWallMm(plan: CakePlan, tMm: number): number {
  if (plan.convex) return plan.perimeterMm + 2 * Math.PI * tMm;
  return grownPaths(plan.rings, tMm)
    .filter(isPositive)
    .reduce((sum, path) => sum + pathLengthMm(path), 0);
}
