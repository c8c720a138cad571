/**
 * Ring tin: a round tin less the tube up its middle; either wall may slope. Perimeter = outer wall + tube, both
 * at the rim. The tube must stay narrower than the tin at every height.
 */
import type { Outline } from '../../domain/outline.ts';
import type { RingTin } from '../../domain/shape.ts';
import { circleRing } from '../outline/rings.ts';
import { roundFrustumMm3, widthAt } from './frustum.ts';
import type { ShapeRule } from './shape-rule.ts';

function annulus(acrossMm: number, tubeMm: number): Outline {
  return { rings: [circleRing(acrossMm / 2), circleRing(tubeMm / 2)] };
}

const areaMm2 = ({ acrossMm, tubeMm }: RingTin): number => (Math.PI / 4) * (acrossMm ** 2 - tubeMm ** 2);

function coneMm3(baseMm: number, rimMm: number, heightMm: number, depthMm: number): number {
  return roundFrustumMm3(baseMm / 2, widthAt(baseMm, rimMm, heightMm, depthMm) / 2, heightMm);
}

export const ringRule: ShapeRule<RingTin> = {
  fillsEvenly: false,
  outline: ({ acrossMm, tubeMm }) => annulus(acrossMm, tubeMm),
  baseOutline: ({ acrossMm, tubeMm, baseAcrossMm = acrossMm, baseTubeMm = tubeMm }) =>
    baseAcrossMm === acrossMm && baseTubeMm === tubeMm ? null : annulus(baseAcrossMm, baseTubeMm),
  areaMm2,
  perimeterMm: ({ acrossMm, tubeMm }) => Math.PI * (acrossMm + tubeMm),
  fillMm3: ({ acrossMm, tubeMm, baseAcrossMm = acrossMm, baseTubeMm = tubeMm }, heightMm, depthMm) =>
    coneMm3(baseAcrossMm, acrossMm, heightMm, depthMm) - coneMm3(baseTubeMm, tubeMm, heightMm, depthMm),
  growthMm2: areaMm2,
};
