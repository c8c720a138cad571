/** Area of a polygon inside an upright rectangle: cut by one side after another (Sutherland and Hodgman). */
import type { Point } from '../../domain/outline.ts';

type Axis = 'x' | 'y';

function crossing(a: Point, b: Point, axis: Axis, at: number): Point {
  const share = (at - a[axis]) / (b[axis] - a[axis]);
  return axis === 'x' ? { x: at, y: a.y + share * (b.y - a.y) } : { x: a.x + share * (b.x - a.x), y: at };
}

/** What of the polygon lies on the kept side of one line. */
function cut(polygon: Point[], axis: Axis, at: number, keepAbove: boolean): Point[] {
  const kept: Point[] = [];
  const isKept = (point: Point): boolean => (keepAbove ? point[axis] >= at : point[axis] <= at);
  let before = polygon[polygon.length - 1];
  for (const point of polygon) {
    if (before !== undefined && isKept(before) !== isKept(point))
      kept.push(crossing(before, point, axis, at));
    if (isKept(point)) kept.push(point);
    before = point;
  }
  return kept;
}

function signedArea(polygon: Point[]): number {
  let twice = 0;
  let before = polygon[polygon.length - 1];
  for (const point of polygon) {
    if (before !== undefined) twice += before.x * point.y - point.x * before.y;
    before = point;
  }
  return twice / 2;
}

/** The part of a polygon between two lines across one axis. */
export function strip(polygon: Point[], axis: Axis, from: number, to: number): Point[] {
  return cut(cut(polygon, axis, from, true), axis, to, false);
}

/** Level bands of one height, counted from y = first × stepMm. */
export interface FineRows {
  first: number;
  count: number;
  stepMm: number;
}

/**
 * Area of a polygon in every band. By Green's theorem it is the sum of x·dy along the outline within the band:
 * the level cuts between bands have no dy, so that no polygon need be cut.
 */
export function bandAreas(polygon: readonly Point[], { first, count, stepMm }: FineRows): number[] {
  const bands = new Array<number>(count).fill(0);
  let before = polygon[polygon.length - 1];
  for (const point of polygon) {
    if (before !== undefined && before.y !== point.y) addEdge(bands, before, point, first, stepMm);
    before = point;
  }
  const total = bands.reduce((sum, area) => sum + area, 0);
  return total < 0 ? bands.map((area) => -area) : bands;
}

function addEdge(bands: number[], from: Point, to: Point, first: number, stepMm: number): void {
  const slope = (to.x - from.x) / (to.y - from.y);
  const [low, high] = from.y < to.y ? [from.y, to.y] : [to.y, from.y];
  const sign = from.y < to.y ? 1 : -1;
  const last = Math.floor(high / stepMm) - first;
  for (let band = Math.floor(low / stepMm) - first; band <= last; band += 1) {
    const start = Math.max(low, (first + band) * stepMm);
    const end = Math.min(high, (first + band + 1) * stepMm);
    if (end <= start) continue;
    const middleX = from.x + slope * ((start + end) / 2 - from.y);
    bands[band] = (bands[band] ?? 0) + sign * middleX * (end - start);
  }
}

/** Area, without its sign, of a polygon. */
export function polygonArea(polygon: Point[]): number {
  return Math.abs(signedArea(polygon));
}
