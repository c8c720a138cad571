/**
 * Curves as short straight lines, for drawing, cutting and tests of overlap. No point of the curve is further
 * than the tolerance from its chord: sagitta r(1 − cos(θ/2)) for arcs, ⅛·max|B″| for cubics.
 */
import type { Arc, Cubic, Outline, Point, Ring } from '../../domain/outline.ts';
import { pointOnArc } from './arc.ts';
import { type Step, stepsOf } from './walk.ts';

function arcPieces(arc: Arc, toleranceMm: number): number {
  const radius = Math.max(arc.rx, arc.ry);
  if (toleranceMm >= radius) return 3;
  return Math.max(1, Math.ceil(Math.abs(arc.sweep) / (2 * Math.acos(1 - toleranceMm / radius))));
}

function cubicPieces(from: Point, cubic: Cubic, toleranceMm: number): number {
  const bend = (a: Point, b: Point, c: Point) => Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
  const most = Math.max(bend(from, cubic.c1, cubic.c2), bend(cubic.c1, cubic.c2, cubic.to));
  return Math.max(1, Math.ceil(Math.sqrt((0.75 * most) / toleranceMm)));
}

/** The point of a cubic at t from 0 to 1. */
export function pointOnCubic(from: Point, { c1, c2, to }: Cubic, t: number): Point {
  const s = 1 - t;
  const blend = (a: number, b: number, c: number, d: number) =>
    s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
  return { x: blend(from.x, c1.x, c2.x, to.x), y: blend(from.y, c1.y, c2.y, to.y) };
}

function flattenStep({ from, segment }: Step, toleranceMm: number): Point[] {
  if (segment.kind === 'line') return [segment.to];
  const pieces =
    segment.kind === 'arc' ? arcPieces(segment, toleranceMm) : cubicPieces(from, segment, toleranceMm);
  const inner = Array.from({ length: pieces - 1 }, (_, index) => {
    const t = (index + 1) / pieces;
    return segment.kind === 'arc'
      ? pointOnArc(segment, segment.startAngle + segment.sweep * t)
      : pointOnCubic(from, segment, t);
  });
  return [...inner, segment.to];
}

/** One ring as a polygon; the closing edge is implied, the first point is not repeated. */
function flattenRing(ring: Ring, toleranceMm: number): Point[] {
  const ends = stepsOf(ring).flatMap((step) => flattenStep(step, toleranceMm));
  return [ring.start, ...ends.slice(0, -1)];
}

/** Every ring as a polygon, within the tolerance (> 0) of the curve; first points are not repeated. */
export function flattenOutline(outline: Outline, toleranceMm: number): Point[][] {
  if (!(toleranceMm > 0)) throw new RangeError('A flattening tolerance must be above 0 mm.');
  return outline.rings.map((ring) => flattenRing(ring, toleranceMm));
}
