/** What is cut from baking paper for one tin. Lengths in mm; outlines centred, y up, ready for a template. */
import type { Outline } from '../../domain/outline.ts';

export interface LiningSettings {
  /** How much smaller than the base the paper is, all round: paper, folds and seams take room. */
  clearanceMm: number;
  /** How far the ends of a strip lap over each other. */
  overlapMm: number;
  /** How far the strip stands above the rim. */
  collarMm: number;
}

/** The wall that a piece lines: the tin's own, or that of a tube or hole in it. */
export type LinedWall = 'side' | 'tube';

export type LiningPiece =
  | {
      kind: 'base';
      count: number;
      outline: Outline;
      clearanceMm: number;
      /** `exact` keeps lines and arcs; `followed` is a polygon that follows the wall to 0.05 mm. */
      method: 'exact' | 'followed';
    }
  | { kind: 'strip'; wall: LinedWall; count: number; lengthMm: number; heightMm: number }
  | {
      kind: 'sector';
      wall: LinedWall;
      count: number;
      /** Part of a ring: a sloping round wall unrolled. */
      innerRadiusMm: number;
      outerRadiusMm: number;
      angleRad: number;
      outline: Outline;
    }
  | {
      kind: 'panel';
      count: number;
      /** One sloping flat side: its foot at the base, its head at the top of the collar. */
      footMm: number;
      headMm: number;
      heightMm: number;
      outline: Outline;
    }
  /** The clearance does not fit into some part of the base: draw round the tin and trim. */
  | { kind: 'trace-the-base' }
  /** Paper does not lie flat in a dome, and nobody knows the walls of a tin measured by water. */
  | { kind: 'grease-and-flour'; reason: 'curved-wall' | 'unknown-shape' };
