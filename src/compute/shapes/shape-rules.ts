/** Every kind of tin and its rule. A kind without one does not compile. */
import type { Shape, ShapeKind } from '../../domain/shape.ts';
import { outlineRule } from './any-outline.ts';
import { domeRule } from './dome.ts';
import { heartRule } from './heart.ts';
import { loafRule } from './loaf.ts';
import { longOctagonRule } from './long-octagon.ts';
import { measuredRule } from './measured.ts';
import { ovalRule } from './oval.ts';
import { petalRule } from './petal.ts';
import { rectangleRule } from './rectangle.ts';
import { regularPolygonRule } from './regular-polygon.ts';
import { ringRule } from './ring.ts';
import { roundRule } from './round.ts';
import type { ShapeOf, ShapeRule } from './shape-rule.ts';
import { squareRule } from './square.ts';

const SHAPE_RULES: { [K in ShapeKind]: ShapeRule<ShapeOf<K>> } = {
  round: roundRule,
  square: squareRule,
  rectangle: rectangleRule,
  loaf: loafRule,
  hexagon: regularPolygonRule(6),
  octagon: regularPolygonRule(8),
  'long-octagon': longOctagonRule,
  oval: ovalRule,
  heart: heartRule,
  petal: petalRule,
  ring: ringRule,
  dome: domeRule,
  outline: outlineRule,
  measured: measuredRule,
};

/** The rule for a shape. The table's type ties each kind to its own rule; the compiler cannot follow the look-up. */
export function ruleFor(shape: Shape): ShapeRule<Shape> {
  return SHAPE_RULES[shape.kind] as ShapeRule<Shape>;
}
