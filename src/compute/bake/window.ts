/**
 * When to look first, and by when it is done: the 90 % interval about the expected time,
 * ± 1.645·√((t − lag)²·C + σ² + (0.035·t)²), C the variance of ln m. First look is its lower end, expected by
 * its upper. Below 25 minutes past the lag σ shrinks in proportion, else small cakes would be looked at before
 * they went in. Minutes are quantised, never rounded: that is for the words.
 */
import { quantiseMin } from '../../domain/quantise.ts';
import type { BakeConstants } from './constants.ts';
import {
  beliefVariance,
  expectedMinutes,
  type FactorBelief,
  type Observation,
  scatterVariance,
} from './time-factor.ts';

export interface BakeWindow {
  firstLookMin: number;
  /** Most probable time. */
  likelyMin: number;
  expectedByMin: number;
}

/** 5 % of a normal lie beyond it on either side. */
const NINETY_PERCENT = 1.645;

/** The window that a belief gives a bake. */
export function bakeWindow(
  belief: FactorBelief,
  bake: Omit<Observation, 'minutes'>,
  constants: BakeConstants,
): BakeWindow {
  const likely = expectedMinutes(belief, bake, constants.lagMin);
  const reach = NINETY_PERCENT * windowSdMin(belief, bake, constants);
  return {
    firstLookMin: quantiseMin(likely - reach),
    likelyMin: quantiseMin(likely),
    expectedByMin: quantiseMin(likely + reach),
  };
}

/** Standard deviation of one more bake's time, min. */
export function windowSdMin(
  belief: FactorBelief,
  bake: Omit<Observation, 'minutes'>,
  constants: BakeConstants,
): number {
  const likely = expectedMinutes(belief, bake, constants.lagMin);
  const slope = likely - constants.lagMin;
  const factorVariance = slope * slope * beliefVariance(belief, bake.lnSize);
  return Math.sqrt(factorVariance + scatterVariance(likely, constants));
}
