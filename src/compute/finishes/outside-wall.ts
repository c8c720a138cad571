/** A ribbon goes round the outside only: the wall of the coated plan without its holes. */
import { isPositive, type Path64 } from 'clipper2-ts';
import { grownPaths } from './grown-area.ts';
import type { CakePlan } from './plan.ts';

const PER_MM = 1000;

/** Length of a closed path from the polygon library, mm. */
export function pathLengthMm(path: Path64): number {
  let length = 0;
  path.forEach((point, index) => {
    const next = path[(index + 1) % path.length] ?? point;
    length += Math.hypot(next.x - point.x, next.y - point.y);
  });
  return length / PER_MM;
}

/** mm round the outside once a coat of `tMm` is on. */
export function outsideWallMm(plan: CakePlan, tMm: number): number {
  if (plan.convex) return plan.perimeterMm + 2 * Math.PI * tMm;
  return grownPaths(plan.rings, tMm)
    .filter(isPositive)
    .reduce((sum, path) => sum + pathLengthMm(path), 0);
}
