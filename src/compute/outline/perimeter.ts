/**
 * How long is the wall? Lines and circular arcs in closed form; ellipses and cubics by adaptive quadrature of
 * their speed to a relative 1e-11. Valid for any ring, crossing or not: by even-odd every wall is a boundary.
 */
import type { Arc, Cubic, Outline, Point, Ring } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { integrate } from './integrate.ts';
import { stepsOf } from './walk.ts';

const RELATIVE = 1e-11;

function arcLengthMm({ rx, ry, startAngle, sweep }: Arc): number {
  if (rx === ry) return rx * Math.abs(sweep);
  const speed = (angle: number) => Math.hypot(rx * Math.sin(angle), ry * Math.cos(angle));
  const allowed = RELATIVE * Math.max(rx, ry) * Math.abs(sweep);
  return Math.abs(integrate(speed, startAngle, startAngle + sweep, allowed));
}

function cubicLengthMm(from: Point, { c1, c2, to }: Cubic): number {
  const speed = (t: number) => {
    const s = 1 - t;
    const along = (a: number, b: number, c: number, d: number) =>
      3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (d - c));
    return Math.hypot(along(from.x, c1.x, c2.x, to.x), along(from.y, c1.y, c2.y, to.y));
  };
  const legs =
    Math.hypot(c1.x - from.x, c1.y - from.y) +
    Math.hypot(c2.x - c1.x, c2.y - c1.y) +
    Math.hypot(to.x - c2.x, to.y - c2.y);
  return integrate(speed, 0, 1, RELATIVE * legs);
}

/** Length of one ring, mm, not quantised. */
export function ringLengthMm(ring: Ring): number {
  return stepsOf(ring).reduce((sum, { from, segment }) => {
    if (segment.kind === 'arc') return sum + arcLengthMm(segment);
    if (segment.kind === 'cubic') return sum + cubicLengthMm(from, segment);
    return sum + Math.hypot(segment.to.x - from.x, segment.to.y - from.y);
  }, 0);
}

/** Wall length before quantising, for computations that go on with it. */
export function exactOutlinePerimeterMm(outline: Outline): number {
  return outline.rings.reduce((sum, ring) => sum + ringLengthMm(ring), 0);
}

/** Total wall length inside the tin, mm: outer walls and the walls of holes. */
export function outlinePerimeterMm(outline: Outline): number {
  return quantiseMm(exactOutlinePerimeterMm(outline));
}
