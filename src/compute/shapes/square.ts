/** Square tin, upright or narrowing to the base: A = s², tapered volume by the prismatoid formula. */
import type { Square } from '../../domain/shape.ts';
import { rectangleOutline } from '../outline/rings.ts';
import { oblongFrustumMm3, widthAt } from './frustum.ts';
import type { ShapeRule } from './shape-rule.ts';

const squareOf = (sideMm: number) => ({ lengthMm: sideMm, widthMm: sideMm });

export const squareRule: ShapeRule<Square> = {
  fillsEvenly: false,
  outline: ({ sideMm }) => rectangleOutline(sideMm, sideMm),
  baseOutline: ({ sideMm, baseSideMm = sideMm }) =>
    baseSideMm === sideMm ? null : rectangleOutline(baseSideMm, baseSideMm),
  areaMm2: ({ sideMm }) => sideMm ** 2,
  perimeterMm: ({ sideMm }) => 4 * sideMm,
  fillMm3: ({ sideMm, baseSideMm = sideMm }, heightMm, depthMm) => {
    const surface = widthAt(baseSideMm, sideMm, heightMm, depthMm);
    return oblongFrustumMm3(squareOf(baseSideMm), squareOf(surface), heightMm);
  },
  growthMm2: ({ sideMm }) => sideMm ** 2,
};
