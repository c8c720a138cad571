/** Loaf tin: a rectangle whose walls slope in to a smaller base; volume by the prismatoid formula, exact. */
import type { Loaf } from '../../domain/shape.ts';
import { rectangleOutline } from '../outline/rings.ts';
import { oblongFrustumMm3, widthAt } from './frustum.ts';
import type { ShapeRule } from './shape-rule.ts';

const areaMm2 = ({ lengthMm, widthMm }: Loaf): number => lengthMm * widthMm;

export const loafRule: ShapeRule<Loaf> = {
  fillsEvenly: false,
  outline: ({ lengthMm, widthMm }) => rectangleOutline(lengthMm, widthMm),
  baseOutline: ({ lengthMm, widthMm, baseLengthMm, baseWidthMm }) =>
    lengthMm === baseLengthMm && widthMm === baseWidthMm ? null : rectangleOutline(baseLengthMm, baseWidthMm),
  areaMm2,
  perimeterMm: ({ lengthMm, widthMm }) => 2 * (lengthMm + widthMm),
  fillMm3: (loaf, heightMm, depthMm) => {
    const base = { lengthMm: loaf.baseLengthMm, widthMm: loaf.baseWidthMm };
    const surface = {
      lengthMm: widthAt(base.lengthMm, loaf.lengthMm, heightMm, depthMm),
      widthMm: widthAt(base.widthMm, loaf.widthMm, heightMm, depthMm),
    };
    return oblongFrustumMm3(base, surface, heightMm);
  },
  growthMm2: areaMm2,
};
