/**
 * The inside shape of a tin, measured at the rim, and at the base where the wall tapers. All lengths in mm.
 * The depth belongs to the tin, not to the shape.
 */
import type { Outline } from './outline.ts';

/** Straight-walled, or a frustum when the base is narrower. */
export interface Round {
  kind: 'round';
  acrossMm: number;
  baseAcrossMm?: number;
}

export interface Square {
  kind: 'square';
  sideMm: number;
  baseSideMm?: number;
}

export interface Rectangle {
  kind: 'rectangle';
  lengthMm: number;
  widthMm: number;
}

/** A rectangle whose walls taper to the base. */
export interface Loaf {
  kind: 'loaf';
  lengthMm: number;
  widthMm: number;
  baseLengthMm: number;
  baseWidthMm: number;
}

/** Regular, measured across flats or across corners. */
export interface RegularPolygon {
  kind: 'hexagon' | 'octagon';
  acrossMm: number;
  measured: 'flats' | 'corners';
}

/**
 * A rectangle whose corners are cut off at 45°, all four alike. Length and width go from wall to wall; the slant is the
 * length of the wall across a corner.
 */
export interface LongOctagon {
  kind: 'long-octagon';
  lengthMm: number;
  widthMm: number;
  slantMm: number;
}

/** An ellipse. */
export interface Oval {
  kind: 'oval';
  lengthMm: number;
  widthMm: number;
}

/** A square standing on its point with a half disc on each upper side. */
export interface Heart {
  kind: 'heart';
  acrossMm: number;
  /** `across` the two lobes, or from the `point` to the top of the lobes. */
  measured: 'across' | 'point';
}

/** A regular polygon with a half disc on every side; across = the circle around it. */
export interface Petal {
  kind: 'petal';
  petals: number;
  acrossMm: number;
}

/** A round tin with a tube up the middle; either wall may taper. */
export interface RingTin {
  kind: 'ring';
  acrossMm: number;
  tubeMm: number;
  baseAcrossMm?: number;
  baseTubeMm?: number;
}

/** A hemisphere when the depth is half the width, otherwise a spherical cap. Rim up. */
export interface Dome {
  kind: 'dome';
  acrossMm: number;
}

/** Any outline: a numeral, a letter, a novelty tin. Straight walls. */
export interface OutlineShape {
  kind: 'outline';
  outlineId: string;
  outline: Outline;
  /** Its larger side, where the tin says it and not the drawing. */
  acrossMm?: number;
  /** The box around it, for its size in words: across and down the drawing. */
  boxMm?: [number, number];
}

/** Known only by the water it holds; plan area and perimeter are unknown. */
export interface Measured {
  kind: 'measured';
  volumeMl: number;
}

export type Shape =
  | Round
  | Square
  | Rectangle
  | Loaf
  | RegularPolygon
  | LongOctagon
  | Oval
  | Heart
  | Petal
  | RingTin
  | Dome
  | OutlineShape
  | Measured;

export type ShapeKind = Shape['kind'];
/** A table, so that a kind which is missing here does not compile. */
const EVERY_KIND: Record<ShapeKind, true> = {
  round: true,
  square: true,
  rectangle: true,
  loaf: true,
  hexagon: true,
  octagon: true,
  'long-octagon': true,
  oval: true,
  heart: true,
  petal: true,
  ring: true,
  dome: true,
  outline: true,
  measured: true,
};
export const SHAPE_KINDS = Object.keys(EVERY_KIND) as readonly ShapeKind[];
