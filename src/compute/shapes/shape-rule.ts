/**
 * What every kind of tin must answer. Lengths mm, areas mm², volumes mm³, none of them quantised: that happens
 * once, in plan.ts and volume.ts. Heights are measured from the base of the inside.
 */
import type { Outline } from '../../domain/outline.ts';
import type { Shape, ShapeKind } from '../../domain/shape.ts';

export interface ShapeRule<S> {
  /** Every millimetre of height holds the same. */
  fillsEvenly: boolean;
  /** Plan at the rim; null when the shape is unknown. */
  outline(shape: S): Outline | null;
  /** Plan at the base where the wall slopes; null when it is the plan at the rim, a point, or unknown. */
  baseOutline(shape: S): Outline | null;
  /** Area at the rim; null when unknown. */
  areaMm2(shape: S): number | null;
  /** Length of all walls at the rim; null when unknown. */
  perimeterMm(shape: S): number | null;
  /** Fill up to a height from 0 to the depth. */
  fillMm3(shape: S, heightMm: number, depthMm: number): number;
  /** Area by which a fill grows above the rim; differs from the plan area only when that is unknown. */
  growthMm2(shape: S, depthMm: number): number;
}

/** The members of the union that can have this kind: a polygon's type covers hexagons and octagons. */
export type ShapeOf<K extends ShapeKind, S extends Shape = Shape> = S extends Shape
  ? K extends S['kind']
    ? S
    : never
  : never;
