/**
 * How many portions does the cake from a tin give? In rows for every shape that has a plan, in rings for rounds. A half
 * sphere is cut like an orange, into as many pieces as there are guests: seen from above it is a round, but its outer
 * pieces would be crumbs.
 */
import type { Outline } from '../../domain/outline.ts';
import type { PortionSize } from '../../domain/portion.ts';
import type { TinForm } from '../../domain/tin.ts';
import { tinOutline } from '../shapes/index.ts';
import { bestGridCut, type GridCut } from './grid-cut.ts';
import { type RingCut, ringCut } from './ring-cut.ts';

export interface TinPortions {
  size: PortionSize;
  outline: Outline;
  /** Whole and nearly whole pieces: `rows.good` is the count that orders reckon with. */
  rows: GridCut;
  /** Null for anything but a round. */
  rings: RingCut | null;
}

export const isHalfSphere = ({ shape }: Pick<TinForm, 'shape'>): boolean => shape.kind === 'dome';

/** Rings are as deep as a portion is long, slices as wide as it is short. Null for a tin without a plan and for a half sphere. */
export function tinPortions(tin: TinForm, size: PortionSize): TinPortions | null {
  const outline = tinOutline(tin);
  if (outline === null || isHalfSphere(tin)) return null;
  const rings = tin.shape.kind === 'round' ? ringCut(tin.shape.acrossMm, size.longMm, size.shortMm) : null;
  return { size, outline, rows: bestGridCut(outline, size.shortMm, size.longMm), rings };
}
