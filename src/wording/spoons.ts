/**
 * Level spoons beside amounts too small for most kitchen scales, and where kitchens measure by the cup, cups beside
 * every weight. A teaspoon is 5 mL; the grams in one, or the density, are the ingredient's own.
 */
import { ML_PER } from '../domain/units.ts';
import { measuredOut } from './cups.ts';
import { formatEighths } from './fraction.ts';

/** Amounts from this weight up are printed in grams only. */
const SPOONS_BELOW_G = 5;

/** Spoon sets go down to an eighth; above one spoonful quarters are near enough. */
function toSpoonSet(teaspoons: number): number {
  const parts = teaspoons < 1 ? 8 : 4;
  return Math.max(1, Math.round(teaspoons * parts)) / parts;
}

/** What an ingredient's amount is measured by where it is not weighed. */
export interface Measured {
  teaspoonG?: number;
  densityGPerMl?: number;
}

/** Cups beside a weight; null where nobody knows what a cup of it weighs. */
function cupsFor(massG: number, { densityGPerMl, teaspoonG }: Measured): string | null {
  const density = densityGPerMl ?? (teaspoonG === undefined ? undefined : teaspoonG / ML_PER.tsp);
  return density === undefined ? null : measuredOut(massG / density);
}

/**
 * An amount in spoons, null when it is heavy enough to weigh or nobody knows what a teaspoon weighs; in cups too
 * where the locale has them.
 * @example spoonsFor(3, { teaspoonG: 4 }, { pinch: 'a pinch', cups: false }) // '¾ tsp'
 */
export function spoonsFor(
  massG: number,
  item: Measured | undefined,
  { pinch, cups }: { pinch: string; cups: boolean },
): string | null {
  const teaspoonG = item?.teaspoonG;
  if (cups && item !== undefined && massG >= SPOONS_BELOW_G) return cupsFor(massG, item);
  if (teaspoonG === undefined || massG <= 0 || massG >= SPOONS_BELOW_G) return null;
  const teaspoons = massG / teaspoonG;
  return teaspoons < 0.0625 ? pinch : `${formatEighths(toSpoonSet(teaspoons))} tsp`;
}
