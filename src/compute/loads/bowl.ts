/**
 * How many grams of batter does a bowl take at once? The bowl's volume × the share it may be full × the
 * density of the finished batter: a limit of volume, because a whisked batter fills a bowl at half the mass
 * of a creamed one. Shares of 55 % at most and 12 % at least are common practice, no source.
 */

import type { MixerSetting } from '../../domain/kitchen.ts';
import { quantiseG } from '../../domain/quantise.ts';

export interface BowlLimit {
  limitG: number;
  minimumG: number;
}

/**
 * Most and least batter for one load, g, from the raw density of the mixed batter in g/mL.
 * @example 4,800 mL × 55 % × 0.85 g/mL = 2,244 g
 */
export function bowlLimitG(mixer: MixerSetting, rawDensityGPerMl: number): BowlLimit {
  return {
    limitG: quantiseG(mixer.bowlMl * mixer.maxFill * rawDensityGPerMl),
    minimumG: quantiseG(mixer.bowlMl * mixer.minFill * rawDensityGPerMl),
  };
}
