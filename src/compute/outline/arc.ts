/** Points and builders of elliptical arcs. Angles in radians, counter-clockwise. */
import type { Arc, Point } from '../../domain/outline.ts';

export const FULL_TURN = 2 * Math.PI;

/** The point of an arc's ellipse at a parameter angle (the angle on the circle it was stretched from). */
export function pointOnArc(arc: Omit<Arc, 'to' | 'kind'>, angle: number): Point {
  const x = arc.rx * Math.cos(angle);
  const y = arc.ry * Math.sin(angle);
  const cos = Math.cos(arc.rotation);
  const sin = Math.sin(arc.rotation);
  return { x: arc.centre.x + x * cos - y * sin, y: arc.centre.y + x * sin + y * cos };
}

/** An arc with its end point worked out. */
export function arcOf(shape: Omit<Arc, 'to' | 'kind'>): Arc {
  return { kind: 'arc', ...shape, to: pointOnArc(shape, shape.startAngle + shape.sweep) };
}

/** Part of a circle. */
export function circularArc(centre: Point, radiusMm: number, startAngle: number, sweep: number): Arc {
  return arcOf({ centre, rx: radiusMm, ry: radiusMm, rotation: 0, startAngle, sweep });
}
