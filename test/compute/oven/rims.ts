/** Tins on a shelf by their true outlines: rims as points, and the air between them. Lengths mm. */
import { flattenOutline } from '../../../src/compute/outline/index.ts';
import { tinOutline } from '../../../src/compute/shapes/index.ts';
import type { Point } from '../../../src/domain/outline.ts';
import type { TinForm } from '../../../src/domain/tin.ts';

interface Place extends Point {
  turned: boolean;
}

/** The rim's points where the tin stands, mm from the front left corner of the shelf. */
export function standingRim(form: TinForm, place: Place, toleranceMm = 0.05): Point[] {
  const outline = tinOutline(form);
  if (outline === null) throw new Error('no outline');
  const spots = flattenOutline(outline, toleranceMm).flat();
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  const middle = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
  return spots.map((spot) => {
    const [x, y] = [spot.x - middle.x, spot.y - middle.y];
    return place.turned ? { x: place.x - y, y: place.y + x } : { x: place.x + x, y: place.y + y };
  });
}

/** Least distance from the points of one rim to the lines of another. */
export function apartMm(a: Point[], b: Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const p of a)
    b.forEach((from, at) => {
      const to = b[(at + 1) % b.length] ?? from;
      const length = (to.x - from.x) ** 2 + (to.y - from.y) ** 2;
      const along =
        length === 0 ? 0 : ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / length;
      const t = Math.min(1, Math.max(0, along));
      const [x, y] = [from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)];
      least = Math.min(least, Math.hypot(p.x - x, p.y - y));
    });
  return least;
}
