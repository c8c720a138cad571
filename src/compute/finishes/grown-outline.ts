/** The outline of a cake with its coats on: what its card is cut to. Corners are round, as coats are. */
import type { Outline, Point } from '../../domain/outline.ts';
import { grownPaths, PER_MM } from './grown-area.ts';

/** The polygons of a plan grown by `tMm`, as an outline; straight lines within 0.01 mm of the curve. */
export function grownOutline(rings: Point[][], tMm: number): Outline {
  return {
    rings: grownPaths(rings, tMm).flatMap((path) => {
      const [start, ...rest] = path.map(({ x, y }) => ({ x: x / PER_MM, y: y / PER_MM }));
      return start === undefined
        ? []
        : [{ start, segments: rest.map((to) => ({ kind: 'line' as const, to })) }];
    }),
  };
}
