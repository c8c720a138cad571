/**
 * Hexagon and octagon tins, measured across the flats f or across the corners c, f = c·cos(π/n):
 * A = n/4·f²·tan(π/n), P = n·f·tan(π/n).
 */
import type { RegularPolygon } from '../../domain/shape.ts';
import { polygonOutline, regularCorners } from '../outline/rings.ts';
import type { ShapeRule } from './shape-rule.ts';
import { straightWalls } from './straight-walls.ts';

/** The rule for a regular polygon with that many sides (even, so that flats face each other). */
export function regularPolygonRule(sides: number): ShapeRule<RegularPolygon> {
  const flatsMm = ({ acrossMm, measured }: RegularPolygon): number =>
    measured === 'flats' ? acrossMm : acrossMm * Math.cos(Math.PI / sides);
  const slope = Math.tan(Math.PI / sides);
  return straightWalls({
    outline: (shape) => polygonOutline(regularCorners(sides, flatsMm(shape) / 2 / Math.cos(Math.PI / sides))),
    areaMm2: (shape) => (sides / 4) * flatsMm(shape) ** 2 * slope,
    perimeterMm: (shape) => sides * flatsMm(shape) * slope,
  });
}
