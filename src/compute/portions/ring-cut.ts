/**
 * Cutting a round in rings: a knife goes round two inches in, again two inches further in, and each ring is
 * sliced so that a slice is as wide as asked on the ring's middle line. What is left in the middle, narrower
 * than a ring, is one piece. Common practice, no source.
 */
import { quantiseMm } from '../../domain/quantise.ts';

export interface CakeRing {
  outerMm: number;
  innerMm: number;
  slices: number;
}

export interface RingCut {
  rings: CakeRing[];
  /** 1 when a core narrower than a ring is left, else 0. */
  core: 0 | 1;
  total: number;
}

const SLACK = 1e-9;

/** Pieces from a round `acrossMm` wide, rings `ringMm` deep, slices `sliceMm` wide. */
export function ringCut(acrossMm: number, ringMm: number, sliceMm: number): RingCut {
  const rings: CakeRing[] = [];
  let outerMm = acrossMm / 2;
  while (outerMm >= ringMm - SLACK) {
    const innerMm = Math.max(0, outerMm - ringMm);
    const slices = Math.floor((Math.PI * (outerMm + innerMm)) / sliceMm + SLACK);
    rings.push({ outerMm: quantiseMm(outerMm), innerMm: quantiseMm(innerMm), slices });
    outerMm = innerMm;
  }
  const core = outerMm > SLACK ? 1 : 0;
  return { rings, core, total: rings.reduce((sum, ring) => sum + ring.slices, core) };
}
