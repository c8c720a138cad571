/**
 * SVG's arc (end point, radii, two flags) as an arc about its centre. Formulas: SVG 2 (W3C), appendix B.2.4
 * and B.2.5, from memory; radii too small to reach are enlarged, as there.
 */
import type { Point, Segment } from '../domain/outline.ts';

export interface SvgArc {
  rx: number;
  ry: number;
  rotationDeg: number;
  large: boolean;
  /** Counter-clockwise with y up. */
  positive: boolean;
  to: Point;
}

function angleOf({ x, y }: Point): number {
  return Math.atan2(y, x);
}

/** The arc from a point; a straight line where a radius is 0 or the arc ends where it starts. */
export function centredArc(from: Point, arc: SvgArc): Segment {
  const { to, large, positive } = arc;
  if (arc.rx === 0 || arc.ry === 0 || (from.x === to.x && from.y === to.y)) return { kind: 'line', to };
  const rotation = (arc.rotationDeg * Math.PI) / 180;
  const cos = Math.cos(rotation);
  const sin = Math.sin(rotation);
  const halfX = (from.x - to.x) / 2;
  const halfY = (from.y - to.y) / 2;
  const start: Point = { x: cos * halfX + sin * halfY, y: -sin * halfX + cos * halfY };
  const reach = Math.hypot(start.x / arc.rx, start.y / arc.ry);
  const rx = arc.rx * Math.max(1, reach);
  const ry = arc.ry * Math.max(1, reach);
  const unit: Point = { x: start.x / rx, y: start.y / ry };
  const square = unit.x * unit.x + unit.y * unit.y;
  const offset = Math.sqrt(Math.max(0, 1 / square - 1)) * (large === positive ? -1 : 1);
  const middle: Point = { x: offset * unit.y, y: -offset * unit.x };
  const startAngle = angleOf({ x: unit.x - middle.x, y: unit.y - middle.y });
  const endAngle = angleOf({ x: -unit.x - middle.x, y: -unit.y - middle.y });
  const turn = endAngle - startAngle;
  const full = 2 * Math.PI;
  const sweep = positive ? (turn < 0 ? turn + full : turn) : turn > 0 ? turn - full : turn;
  const centre: Point = {
    x: cos * rx * middle.x - sin * ry * middle.y + (from.x + to.x) / 2,
    y: sin * rx * middle.x + cos * ry * middle.y + (from.y + to.y) / 2,
  };
  return { kind: 'arc', to, centre, rx, ry, rotation, startAngle, sweep };
}
