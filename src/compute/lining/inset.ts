/**
 * The base paper of a tin whose walls are neither circles nor straight: the outline flattened to 0.02 mm, each
 * corner moved inwards along its bisector, and every point that then lies closer to a wall than the clearance
 * left out. Good for clearances well below the narrowest part of the tin; a part narrower than twice the
 * clearance gets no paper.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { flattenOutline } from '../outline/flatten.ts';
import { isInside, ringDepths } from '../outline/nesting.ts';
import { polygonOutline } from '../outline/rings.ts';

const FLATTEN_MM = 0.02;
const ALLOWED_MM = 0.05;
/** Sharper corners than this are cut off rather than drawn out. */
const LONGEST_CORNER = 3;

type Polygon = readonly Point[];

function distanceToEdge(point: Point, a: Point, b: Point): number {
  const edge = { x: b.x - a.x, y: b.y - a.y };
  const square = edge.x * edge.x + edge.y * edge.y;
  const along = square === 0 ? 0 : ((point.x - a.x) * edge.x + (point.y - a.y) * edge.y) / square;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - a.x - t * edge.x, point.y - a.y - t * edge.y);
}

function distanceToWalls(point: Point, walls: readonly Polygon[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const wall of walls) {
    for (const [index, corner] of wall.entries()) {
      nearest = Math.min(nearest, distanceToEdge(point, corner, wall[(index + 1) % wall.length] ?? corner));
    }
  }
  return nearest;
}

/** Unit normal of an edge, to its left; null for an edge without length. */
function leftNormal(a: Point, b: Point): Point | null {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return length === 0 ? null : { x: (a.y - b.y) / length, y: (b.x - a.x) / length };
}

function movedCorner(before: Point, corner: Point, after: Point, byMm: number): Point | null {
  const first = leftNormal(before, corner);
  const second = leftNormal(corner, after);
  if (first === null || second === null) return null;
  const both = 1 + first.x * second.x + first.y * second.y;
  if (both < 2 / LONGEST_CORNER ** 2) return null;
  const reach = byMm / both;
  return { x: corner.x + (first.x + second.x) * reach, y: corner.y + (first.y + second.y) * reach };
}

function runsCounterClockwise(polygon: Polygon): boolean {
  const doubled = polygon.reduce((sum, a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
  return doubled > 0;
}

function insetRing(polygon: Polygon, byMm: number, walls: readonly Polygon[]): Point[] {
  return polygon.flatMap((corner, index) => {
    const before = polygon[(index + polygon.length - 1) % polygon.length] ?? corner;
    const after = polygon[(index + 1) % polygon.length] ?? corner;
    const moved = movedCorner(before, corner, after, byMm);
    if (moved === null) return [];
    const parity = walls.filter((wall) => isInside(moved, wall)).length % 2;
    const clear = parity === 1 && distanceToWalls(moved, walls) >= Math.abs(byMm) - ALLOWED_MM;
    return clear ? [moved] : [];
  });
}

/** The outline a clearance (≥ 0, mm) inside its own walls, holes grown by as much, as polygons. */
export function followedInset(outline: Outline, clearanceMm: number): Outline {
  const walls = flattenOutline(outline, FLATTEN_MM);
  const depths = ringDepths(outline);
  const insets = walls.map((wall, index) => {
    const isHole = (depths[index] ?? 0) % 2 === 1;
    const inwards = runsCounterClockwise(wall) !== isHole ? clearanceMm : -clearanceMm;
    return insetRing(wall, inwards, walls);
  });
  return polygonOutline(...insets.filter((points) => points.length > 2));
}
