/** The upright box around an outline, from the turning points of its curves, not from their handles. */
import type { Arc, Cubic, Outline, Point } from '../../domain/outline.ts';
import { FULL_TURN, pointOnArc } from './arc.ts';
import { pointOnCubic } from './flatten.ts';
import { type Step, stepsOf } from './walk.ts';

export interface Bounds {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

function isOnSweep(angle: number, { startAngle, sweep }: Arc): boolean {
  const turned = sweep >= 0 ? angle - startAngle : startAngle - angle;
  return turned - FULL_TURN * Math.floor(turned / FULL_TURN) <= Math.abs(sweep);
}

function arcTurningPoints(arc: Arc): Point[] {
  const alongX = Math.atan2(-arc.ry * Math.sin(arc.rotation), arc.rx * Math.cos(arc.rotation));
  const alongY = Math.atan2(arc.ry * Math.cos(arc.rotation), arc.rx * Math.sin(arc.rotation));
  return [alongX, alongX + Math.PI, alongY, alongY + Math.PI]
    .filter((angle) => isOnSweep(angle, arc))
    .map((angle) => pointOnArc(arc, angle));
}

/** Where one coordinate of a cubic stands still, strictly between its ends. */
function standstills(a: number, b: number, c: number, d: number): number[] {
  const square = d - 3 * c + 3 * b - a;
  const linear = 2 * (c - 2 * b + a);
  const constant = b - a;
  const root = Math.sqrt(linear * linear - 4 * square * constant);
  const half = -(linear + (linear < 0 ? -root : root)) / 2;
  return [half / square, constant / half].filter((t) => t > 0 && t < 1);
}

function cubicTurningPoints(from: Point, cubic: Cubic): Point[] {
  const { c1, c2, to } = cubic;
  const stops = [...standstills(from.x, c1.x, c2.x, to.x), ...standstills(from.y, c1.y, c2.y, to.y)];
  return stops.map((t) => pointOnCubic(from, cubic, t));
}

function extremes({ from, segment }: Step): Point[] {
  if (segment.kind === 'arc') return [from, segment.to, ...arcTurningPoints(segment)];
  if (segment.kind === 'cubic') return [from, segment.to, ...cubicTurningPoints(from, segment)];
  return [from, segment.to];
}

/** Box around every ring, mm; all zero for an outline without rings. */
export function outlineBounds(outline: Outline): Bounds {
  const points = outline.rings.flatMap((ring) => [ring.start, ...stepsOf(ring).flatMap(extremes)]);
  const [first] = points;
  if (first === undefined) return { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const box = { minX: first.x, minY: first.y, maxX: first.x, maxY: first.y };
  for (const { x, y } of points) {
    box.minX = Math.min(box.minX, x);
    box.minY = Math.min(box.minY, y);
    box.maxX = Math.max(box.maxX, x);
    box.maxY = Math.max(box.maxY, y);
  }
  return box;
}
