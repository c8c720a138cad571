/**
 * How is a cake of an order baked? The heat, the minutes and what helps it through, once for every paper and for the
 * timetable. Minutes are on the five, as charts say them; small cakes have the kitchen's own, as they were given.
 */
import { nearestFive } from '../../domain/bake-minutes.ts';
import type { BakeMinutes } from '../timeline/work.ts';
import type { PlannedTier } from './planned-order.types.ts';

export interface TierOven {
  /** As set on a conventional oven, °C. */
  ovenC: number;
  bake: BakeMinutes;
  /** The kitchen's heating core stands in the tin. */
  core: boolean;
  /** Its insulated band lies round the tin. */
  band: boolean;
}

/** The tier in the oven; null where the oven is too cool for it. */
export function tierOven({ bake, recipe, withCore, withBand, ask: { small } }: PlannedTier): TierOven | null {
  if (small !== undefined) {
    const { firstLookMin: firstLook, byMin: by, ovenC = recipe.ovenC } = small.bake;
    const minutes = { firstLook, expected: Math.round((firstLook + by) / 2), by };
    return { ovenC, bake: minutes, core: false, band: false };
  }
  if (bake === null) return null;
  const { firstLookMin, likelyMin, expectedByMin } = bake.window;
  const minutes = {
    firstLook: nearestFive(firstLookMin),
    expected: nearestFive(likelyMin),
    by: nearestFive(expectedByMin),
  };
  return { ovenC: bake.dialC, bake: minutes, core: withCore, band: withBand };
}
