/**
 * Area of an outline grown by t, with round corners, where no formula holds: holes shrink, inner corners fill
 * up and neighbouring lobes merge. Done by a polygon library on the flattened outline, in thousandths of mm.
 */
import { areaPaths, EndType, FillRule, inflatePaths, JoinType, type Paths64, union } from 'clipper2-ts';
import type { Point } from '../../domain/outline.ts';

export const PER_MM = 1000;
/** A chord may fall this far inside its arc, in thousandths of mm. */
const ARC_TOLERANCE = 2;
const MITRE_LIMIT = 2;

/** Rings in the library's whole units, thousandths of a millimetre. */
export function wholePaths(rings: Point[][]): Paths64 {
  return rings.map((ring) =>
    ring.map((point) => ({ x: Math.round(point.x * PER_MM), y: Math.round(point.y * PER_MM) })),
  );
}

/** One plan is grown by the same thickness for many finishes: the library is asked once. */
const grown = new WeakMap<Point[][], Map<number, Paths64>>();

/** Polygons grown by `tMm`, in thousandths of mm; even-odd rings in, outer rings and holes out. */
export function grownPaths(rings: Point[][], tMm: number): Paths64 {
  const known = grown.get(rings) ?? new Map<number, Paths64>();
  grown.set(rings, known);
  const paths = known.get(tMm) ?? inflated(rings, tMm);
  known.set(tMm, paths);
  return paths;
}

function inflated(rings: Point[][], tMm: number): Paths64 {
  const oriented = union(wholePaths(rings), FillRule.EvenOdd);
  return inflatePaths(oriented, tMm * PER_MM, JoinType.Round, EndType.Polygon, MITRE_LIMIT, ARC_TOLERANCE);
}

/** mm² of the outline grown by `tMm`. */
export function grownAreaMm2(rings: Point[][], tMm: number): number {
  return Math.abs(areaPaths(grownPaths(rings, tMm))) / (PER_MM * PER_MM);
}
