/** The plan of a cake once a coat of t is on: what a rolled sheet, a ribbon and a board start from. */
import { grownPaths } from './grown-area.ts';
import { offsetAreaMm2 } from './offset-area.ts';
import { pathLengthMm } from './outside-wall.ts';
import type { CakePlan } from './plan.ts';

function libraryPerimeterMm(plan: CakePlan, tMm: number): number {
  return grownPaths(plan.rings, tMm).reduce((sum, path) => sum + pathLengthMm(path), 0);
}

/** The plan grown by `tMm` with round corners; the same plan for 0. Its rings are not carried on. */
export function grownPlan(plan: CakePlan, tMm: number): CakePlan {
  if (tMm === 0) return plan;
  return {
    areaMm2: offsetAreaMm2(plan, tMm),
    perimeterMm: plan.convex ? plan.perimeterMm + 2 * Math.PI * tMm : libraryPerimeterMm(plan, tMm),
    convex: plan.convex,
    corners: [],
    widthMm: plan.widthMm + 2 * tMm,
    heightMm: plan.heightMm + 2 * tMm,
    aroundMm: plan.aroundMm + 2 * tMm,
    rings: [],
  };
}
