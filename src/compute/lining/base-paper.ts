/**
 * The paper for the base: the base outline less a clearance all round. Exact for shapes that stay themselves
 * when they shrink (round, square, rectangle, loaf, polygons, long octagon, ring); others follow their walls as polygons.
 */
import type { Outline } from '../../domain/outline.ts';
import type { Shape } from '../../domain/shape.ts';
import { settleOutline } from '../outline/settle.ts';
import { ruleFor } from '../shapes/shape-rules.ts';
import { followedInset } from './inset.ts';
import type { LiningPiece } from './lining-piece.ts';

/** The base as a tin of its own, smaller by twice the clearance across; null where that is not exact. */
function shrunkBase(shape: Shape, clearanceMm: number): Shape | null {
  const less = 2 * clearanceMm;
  switch (shape.kind) {
    case 'round':
      return { kind: 'round', acrossMm: (shape.baseAcrossMm ?? shape.acrossMm) - less };
    case 'square':
      return { kind: 'square', sideMm: (shape.baseSideMm ?? shape.sideMm) - less };
    case 'rectangle':
      return { kind: 'rectangle', lengthMm: shape.lengthMm - less, widthMm: shape.widthMm - less };
    case 'loaf':
      return { kind: 'rectangle', lengthMm: shape.baseLengthMm - less, widthMm: shape.baseWidthMm - less };
    case 'hexagon':
    case 'octagon': {
      const turned = shape.measured === 'flats' ? 1 : Math.cos(Math.PI / (shape.kind === 'hexagon' ? 6 : 8));
      return { ...shape, acrossMm: shape.acrossMm - less / turned };
    }
    case 'long-octagon': {
      // Between corners of 135° every wall loses 2·d·tan 22½°; one that is used up leaves another shape.
      const lost = less * (Math.SQRT2 - 1);
      const cut = shape.slantMm * Math.SQRT2;
      const shortest = Math.min(shape.slantMm, shape.lengthMm - cut, shape.widthMm - cut);
      if (shortest <= lost) return null;
      return {
        ...shape,
        lengthMm: shape.lengthMm - less,
        widthMm: shape.widthMm - less,
        slantMm: shape.slantMm - lost,
      };
    }
    case 'ring': {
      const acrossMm = (shape.baseAcrossMm ?? shape.acrossMm) - less;
      return { kind: 'ring', acrossMm, tubeMm: (shape.baseTubeMm ?? shape.tubeMm) + less };
    }
    default:
      return null;
  }
}

/** Less than this across is not worth cutting. */
const SMALLEST_MM = 1;

/** Whether paper is left after the clearance. */
function isPaper(shape: Shape): boolean {
  if (shape.kind === 'rectangle') return Math.min(shape.lengthMm, shape.widthMm) >= SMALLEST_MM;
  if (shape.kind === 'ring') return shape.acrossMm - shape.tubeMm >= SMALLEST_MM;
  return (ruleFor(shape).perimeterMm(shape) ?? 0) >= SMALLEST_MM;
}

function basePiece(outline: Outline, clearanceMm: number, method: 'exact' | 'followed'): LiningPiece {
  return { kind: 'base', count: 1, outline: settleOutline(outline), clearanceMm, method };
}

/** The base paper; where the clearance does not fit, the base is drawn round the tin instead. */
export function basePaper(shape: Shape, clearanceMm: number): LiningPiece {
  const shrunk = shrunkBase(shape, clearanceMm);
  if (shrunk !== null) {
    const outline = isPaper(shrunk) ? ruleFor(shrunk).outline(shrunk) : null;
    return outline === null ? { kind: 'trace-the-base' } : basePiece(outline, clearanceMm, 'exact');
  }
  const outline = ruleFor(shape).outline(shape);
  const inset = outline === null ? null : followedInset(outline, clearanceMm);
  return inset === null ? { kind: 'trace-the-base' } : basePiece(inset, clearanceMm, 'followed');
}
