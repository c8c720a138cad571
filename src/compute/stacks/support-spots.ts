/**
 * Where does a support go, said so that a hand with a ruler finds it? From the middle; right and back of it; by the
 * minutes of a clock face whose 12 points to the back; and in from the nearest edge of the coated tier it stands in:
 *
 *   from the edge = way to the bare cake's outline + coat
 */
import type { Point } from '../../domain/outline.ts';
import { quantiseMm, quantiseRatio } from '../../domain/quantise.ts';
import type { CakePlan } from '../finishes/plan.ts';

export interface SupportSpot {
  fromMiddleMm: number;
  /** Left is negative. */
  rightMm: number;
  /** To the front is negative. */
  backMm: number;
  /** 0 to 60, 0 at the back, clockwise seen from above. */
  clockMin: number;
  fromEdgeMm: number;
}

const CLOCK_MIN = 60;

function fromLineMm(at: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((at.x - a.x) * dx + (at.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(at.x - a.x - share * dx, at.y - a.y - share * dy);
}

/** The shortest way from a point to any ring, mm; Infinity without rings. */
export function toRingsMm(at: Point, rings: readonly (readonly Point[])[]): number {
  let shortest = Infinity;
  for (const ring of rings)
    ring.forEach((a, index) => {
      shortest = Math.min(shortest, fromLineMm(at, a, ring[(index + 1) % ring.length] ?? a));
    });
  return shortest;
}

function clockMin({ x, y }: Point): number {
  const turns = Math.atan2(x, y) / (2 * Math.PI);
  const minutes = quantiseRatio((turns < 0 ? turns + 1 : turns) * CLOCK_MIN);
  return minutes === CLOCK_MIN ? 0 : minutes;
}

/** The same places clockwise from the back, as they are numbered. */
export const clockwise = (places: readonly Point[]): Point[] =>
  [...places].sort(
    (a, b) =>
      clockMin(a) - clockMin(b) || quantiseMm(Math.hypot(a.x, a.y)) - quantiseMm(Math.hypot(b.x, b.y)),
  );

/** Places (mm from the middle, y up) in a tier of this plan under a coat so thick. */
export const supportSpots = (
  places: readonly Point[],
  { rings }: Pick<CakePlan, 'rings'>,
  coatMm: number,
): SupportSpot[] =>
  places.map((at) => ({
    fromMiddleMm: quantiseMm(Math.hypot(at.x, at.y)),
    rightMm: quantiseMm(at.x),
    backMm: quantiseMm(at.y),
    clockMin: clockMin(at),
    fromEdgeMm: quantiseMm(toRingsMm(at, rings) + coatMm),
  }));
