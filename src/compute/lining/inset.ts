/**
 * The base paper of a tin whose walls are neither circles nor straight: the outline flattened to 0.02 mm, each
 * corner moved inwards along its bisector (round a corner that points into the paper, along an arc), and every
 * point that then lies closer to a wall than the clearance left out. Good for clearances below half the
 * narrowest part of the tin; where an edge would still come too close, there is no paper rather than a wrong one.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { flattenOutline } from '../outline/flatten.ts';
import { isInside, ringDepths } from '../outline/nesting.ts';
import { polygonOutline } from '../outline/rings.ts';

const FLATTEN_MM = 0.02;
const ALLOWED_MM = 0.05;
/** Sharper corners than this are cut off rather than drawn out. */
const LONGEST_CORNER = 3;
const FAN_RAD = Math.PI / 12;
const LOOK_MM = 2;

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

/** Points at the distance all round a corner that points into the paper, from one normal to the next. */
function aroundCorner(corner: Point, first: Point, second: Point, byMm: number): Point[] {
  const angle = Math.atan2(first.x * second.y - first.y * second.x, first.x * second.x + first.y * second.y);
  const steps = Math.ceil(Math.abs(angle) / FAN_RAD);
  return Array.from({ length: steps + 1 }, (_, step) => {
    const turn = (angle * step) / steps;
    const x = first.x * Math.cos(turn) - first.y * Math.sin(turn);
    const y = first.x * Math.sin(turn) + first.y * Math.cos(turn);
    return { x: corner.x + x * byMm, y: corner.y + y * byMm };
  });
}

function movedCorner(before: Point, corner: Point, after: Point, byMm: number): Point[] {
  const first = leftNormal(before, corner);
  const second = leftNormal(corner, after);
  if (first === null || second === null) return [];
  const leftTurn = first.x * second.y - first.y * second.x;
  const both = 1 + first.x * second.x + first.y * second.y;
  if (leftTurn * byMm < 0 && both < 1 + Math.cos(FAN_RAD)) return aroundCorner(corner, first, second, byMm);
  if (both < 2 / LONGEST_CORNER ** 2) return [];
  const reach = byMm / both;
  return [{ x: corner.x + (first.x + second.x) * reach, y: corner.y + (first.y + second.y) * reach }];
}

function runsCounterClockwise(polygon: Polygon): boolean {
  const doubled = polygon.reduce((sum, a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
  return doubled > 0;
}

function isClear(point: Point, clearanceMm: number, walls: readonly Polygon[]): boolean {
  const parity = walls.filter((wall) => isInside(point, wall)).length % 2;
  return parity === 1 && distanceToWalls(point, walls) >= clearanceMm - ALLOWED_MM;
}

function insetRing(polygon: Polygon, byMm: number, walls: readonly Polygon[]): Point[] {
  return polygon.flatMap((corner, index) => {
    const before = polygon[(index + polygon.length - 1) % polygon.length] ?? corner;
    const after = polygon[(index + 1) % polygon.length] ?? corner;
    const moved = movedCorner(before, corner, after, byMm);
    return moved.filter((point) => isClear(point, Math.abs(byMm), walls));
  });
}

/** Leaving points out may have drawn an edge across a narrow part: looked at every 2 mm. */
function hasClearEdges(polygon: Polygon, clearanceMm: number, walls: readonly Polygon[]): boolean {
  return polygon.every((a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    const looks = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / LOOK_MM);
    return Array.from({ length: Math.max(0, looks - 1) }, (_, k) => (k + 1) / looks).every((t) =>
      isClear({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }, clearanceMm, walls),
    );
  });
}

/**
 * The outline a clearance (≥ 0, mm) inside its own walls, holes grown by as much, as polygons; null when the
 * clearance does not fit everywhere.
 */
export function followedInset(outline: Outline, clearanceMm: number): Outline | null {
  const walls = flattenOutline(outline, FLATTEN_MM);
  const depths = ringDepths(outline);
  const insets = walls.map((wall, index) => {
    const isHole = (depths[index] ?? 0) % 2 === 1;
    const inwards = runsCounterClockwise(wall) !== isHole ? clearanceMm : -clearanceMm;
    return insetRing(wall, inwards, walls);
  });
  const fits = insets.every((points) => points.length > 2 && hasClearEdges(points, clearanceMm, walls));
  return fits ? polygonOutline(...insets) : null;
}
