/** Area of a polygon inside an upright rectangle: cut by one side after another (Sutherland and Hodgman). */
import type { Point } from '../../domain/outline.ts';

export interface Cell {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

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

/** Area, without its sign, of a polygon. */
export function polygonArea(polygon: Point[]): number {
  return Math.abs(signedArea(polygon));
}
