/** The plan of a cake as finishing sees it: known area, wall and width; an outline where one exists. */
import type { Point } from '../../domain/outline.ts';

export interface CakePlan {
  areaMm2: number;
  /** Outside wall, and the wall of a hole where there is one. */
  perimeterMm: number;
  /** Whether every corner points outwards, so that the parallel outline has a closed formula. */
  convex: boolean;
  /** Exterior angles of the sharp corners, radians; empty for a round. Needed for sharp-edged coats only. */
  corners: number[];
  widthMm: number;
  heightMm: number;
  /** Diameter of the circle around the centre that holds the plan. */
  aroundMm: number;
  /** Closed polygons within 0.01 mm of the outline, for what has no formula. */
  rings: Point[][];
}
