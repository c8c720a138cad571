/** Round tin, upright or narrowing to the base: A = πR², V = πh/3·(R² + Rr + r²). */
import type { Round } from '../../domain/shape.ts';
import { circleRing } from '../outline/rings.ts';
import { roundFrustumMm3, widthAt } from './frustum.ts';
import type { ShapeRule } from './shape-rule.ts';

const areaMm2 = ({ acrossMm }: Round): number => (Math.PI * acrossMm ** 2) / 4;

export const roundRule: ShapeRule<Round> = {
  fillsEvenly: false,
  outline: ({ acrossMm }) => ({ rings: [circleRing(acrossMm / 2)] }),
  baseOutline: ({ acrossMm, baseAcrossMm = acrossMm }) =>
    baseAcrossMm === acrossMm ? null : { rings: [circleRing(baseAcrossMm / 2)] },
  areaMm2,
  perimeterMm: ({ acrossMm }) => Math.PI * acrossMm,
  fillMm3: ({ acrossMm, baseAcrossMm = acrossMm }, heightMm, depthMm) => {
    const surface = widthAt(baseAcrossMm, acrossMm, heightMm, depthMm);
    return roundFrustumMm3(baseAcrossMm / 2, surface / 2, heightMm);
  },
  growthMm2: areaMm2,
};
