/**
 * Dome tin, rim up: a hemisphere when the depth is half the width, otherwise the cap of a sphere of radius
 * R = (a² + d²)/(2d) with a = half the width at the rim. Filled to h from its lowest point: V = πh²(3R − h)/3.
 */
import type { Dome } from '../../domain/shape.ts';
import { circleRing } from '../outline/rings.ts';
import type { ShapeRule } from './shape-rule.ts';

const areaMm2 = ({ acrossMm }: Dome): number => (Math.PI * acrossMm ** 2) / 4;

export const domeRule: ShapeRule<Dome> = {
  fillsEvenly: false,
  outline: ({ acrossMm }) => ({ rings: [circleRing(acrossMm / 2)] }),
  baseOutline: () => null,
  areaMm2,
  perimeterMm: ({ acrossMm }) => Math.PI * acrossMm,
  fillMm3: ({ acrossMm }, heightMm, depthMm) => {
    const sphereMm = ((acrossMm / 2) ** 2 + depthMm ** 2) / (2 * depthMm);
    return (Math.PI * heightMm ** 2 * (3 * sphereMm - heightMm)) / 3;
  },
  growthMm2: areaMm2,
};
