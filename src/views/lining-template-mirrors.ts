/** Which halves of a tin's base mirror each other: such a pattern can be cut on folded paper. */
import type { Shape } from '../domain/shape.ts';

export interface Mirrors {
  leftRight: boolean;
  topBottom: boolean;
}

export const MIRRORED: Mirrors = { leftRight: true, topBottom: true };

/** Of the shape as it is drawn: a flat side or the point below. */
export function mirrorsOf(shape: Shape): Mirrors {
  switch (shape.kind) {
    case 'heart':
      return { leftRight: true, topBottom: false };
    case 'petal':
      return { leftRight: true, topBottom: shape.petals % 2 === 0 };
    case 'outline':
    case 'measured':
      return { leftRight: false, topBottom: false };
    case 'round':
    case 'square':
    case 'rectangle':
    case 'loaf':
    case 'hexagon':
    case 'octagon':
    case 'long-octagon':
    case 'oval':
    case 'ring':
    case 'dome':
      return MIRRORED;
  }
}
