/**
 * What holds up a tier: so many supports under it, a ring of them a little inside its edge. Count = max(4, half
 * its width in inches, rounded up), three at four inches and below; even under anything with corners. Common
 * practice, no source: what a cake really weighs, and local advice, come first.
 */
import { EndType, FillRule, inflatePaths, JoinType, union } from 'clipper2-ts';
import type { Point } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { MM_PER } from '../../domain/units.ts';
import { PER_MM, wholePaths } from '../finishes/grown-area.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { ringLength } from '../outline/ring-length.ts';

const SUPPORT_INSET_MM = 25;
const LEAST = 4;
const SMALL_MM = 4 * MM_PER.in;
const SMALL = 3;

export interface Supports {
  count: number;
  /** Middles, mm from the middle of the tier, y up. */
  places: Point[];
}

type Held = Pick<CakePlan, 'widthMm' | 'heightMm' | 'rings' | 'corners' | 'convex'>;

/** How many supports a tier this wide gets. */
export function supportCount({ widthMm, heightMm, corners, convex }: Held): number {
  const acrossMm = Math.max(widthMm, heightMm);
  const isRound = convex && corners.length === 0;
  if (isRound && acrossMm <= SMALL_MM + 1e-6) return SMALL;
  const count = Math.max(LEAST, Math.ceil(quantiseMm(acrossMm) / MM_PER.in / 2 - 1e-9));
  return isRound || count % 2 === 0 ? count : count + 1;
}

/** The outermost ring of the plan, moved in; null when nothing is left of it. */
function insetRing(rings: Point[][], insetMm: number): Point[] | null {
  const whole = union(wholePaths(rings), FillRule.EvenOdd);
  const moved = inflatePaths(whole, -insetMm * PER_MM, JoinType.Miter, EndType.Polygon);
  const longest = [...moved].sort((a, b) => ringLength(b) - ringLength(a))[0];
  return longest === undefined ? null : longest.map(({ x, y }) => ({ x: x / PER_MM, y: y / PER_MM }));
}

/** Where to begin: the point farthest from the middle, of those equally far the topmost, then the leftmost. */
function firstIndex(ring: readonly Point[]): number {
  const rank = ({ x, y }: Point): number[] => [-Math.round(Math.hypot(x, y) * 10), -Math.round(y * 10), x];
  let best = 0;
  ring.forEach((point, index) => {
    const [a, b] = [rank(point), rank(ring[best] ?? point)];
    const differing = a.findIndex((value, at) => value !== b[at]);
    if (differing !== -1 && (a[differing] ?? 0) < (b[differing] ?? 0)) best = index;
  });
  return best;
}

/** Points equally far apart along a ring. */
function along(ring: readonly Point[], count: number): Point[] {
  const first = firstIndex(ring);
  const points = [...ring.slice(first), ...ring.slice(0, first)];
  const apart = ringLength(points) / count;
  const found: Point[] = [];
  let walked = 0;
  points.forEach((point, index) => {
    const next = points[(index + 1) % points.length] ?? point;
    const step = Math.hypot(next.x - point.x, next.y - point.y);
    while (found.length < count && found.length * apart <= walked + step - 1e-6) {
      const share = step === 0 ? 0 : (found.length * apart - walked) / step;
      found.push({ x: point.x + share * (next.x - point.x), y: point.y + share * (next.y - point.y) });
    }
    walked += step;
  });
  return found;
}

const placed = ({ x, y }: Point): Point => ({ x: quantiseMm(x), y: quantiseMm(y) });

function roundPlaces(acrossMm: number, count: number, insetMm: number): Point[] {
  const radius = acrossMm / 2 - insetMm;
  return Array.from({ length: count }, (_, index) => {
    const angle = Math.PI / 2 + (2 * Math.PI * index) / count;
    return placed({ x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
  });
}

/** Supports under the tier of this plan (the bare cake, without its coat); no places where it is too small for any. */
export function supportsUnder(plan: Held, insetMm: number = SUPPORT_INSET_MM): Supports {
  const count = supportCount(plan);
  const acrossMm = Math.max(plan.widthMm, plan.heightMm);
  if (plan.convex && plan.corners.length === 0 && Math.abs(plan.widthMm - plan.heightMm) < 1e-6)
    return { count, places: acrossMm > 2 * insetMm ? roundPlaces(acrossMm, count, insetMm) : [] };
  const ring = insetRing(plan.rings, insetMm);
  return { count, places: ring === null ? [] : along(ring, count).map(placed) };
}
