/**
 * What room does a tin take on a shelf? A rounded rectangle that holds its outline: half widths and a corner
 * radius. A round tin is all radius, a square one all box; any other outline takes the smaller of the circle and
 * the box around it. Distances between such shapes are exact: boxes of the summed half widths, corners rounded by
 * the summed radii. Inside measures: rims and handles are left to the air gap.
 */
import { quantiseMm, quantiseMm2 } from '../../domain/quantise.ts';
import type { TinForm } from '../../domain/tin.ts';
import { flattenOutline, outlineBounds } from '../outline/index.ts';
import { tinOutline } from '../shapes/index.ts';

/** Lengths mm; what the tin reaches from its middle is half + round, each way. */
export interface Footprint {
  halfXMm: number;
  halfYMm: number;
  roundMm: number;
}

const TOLERANCE_MM = 0.005;

/** The room a tin takes, its longer side across; null for a tin known only by the water it holds. */
export function tinFootprint(form: TinForm): Footprint | null {
  const outline = tinOutline(form);
  if (outline === null) return null;
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  const box = { halfXMm: quantiseMm((maxX - minX) / 2), halfYMm: quantiseMm((maxY - minY) / 2), roundMm: 0 };
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const spots = flattenOutline(outline, TOLERANCE_MM).flat();
  const reach = spots.reduce((most, { x, y }) => Math.max(most, Math.hypot(x - middle.x, y - middle.y)), 0);
  const least = Math.min(box.halfXMm, box.halfYMm);
  // A flattened curve may lie the tolerance inside the true one, never farther.
  const roundMm = quantiseMm(reach <= least + TOLERANCE_MM ? least : reach + TOLERANCE_MM);
  const isRounder = quantiseMm2(Math.PI * roundMm * roundMm) < quantiseMm2(4 * box.halfXMm * box.halfYMm);
  return isRounder ? { halfXMm: 0, halfYMm: 0, roundMm } : box;
}

/** The same tin turned by a quarter. */
export const turnedFootprint = ({ halfXMm, halfYMm, roundMm }: Footprint): Footprint => ({
  halfXMm: halfYMm,
  halfYMm: halfXMm,
  roundMm,
});

/** Area within so much air all round, mm². */
export function airedAreaMm2({ halfXMm, halfYMm, roundMm }: Footprint, airMm: number): number {
  const corner = roundMm + airMm;
  return 4 * halfXMm * halfYMm + 4 * (halfXMm + halfYMm) * corner + Math.PI * corner * corner;
}

/** The same for tins that take the same room. */
export const footprintKey = ({ halfXMm, halfYMm, roundMm }: Footprint): string =>
  `${halfXMm}/${halfYMm}/${roundMm}`;
