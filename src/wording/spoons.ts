/**
 * Level spoons beside amounts too small for most kitchen scales. A teaspoon is 5 mL; the grams in one are the
 * ingredient's own.
 */
import { formatEighths } from './fraction.ts';

/** Amounts from this weight up are printed in grams only. */
export const SPOONS_BELOW_G = 5;

/** Spoon sets come in quarters, and an eighth. */
function toSpoonSet(teaspoons: number): number {
  return teaspoons < 0.1875 ? 0.125 : Math.round(teaspoons * 4) / 4;
}

/**
 * An amount in spoons, null when it is heavy enough to weigh or nobody knows what a teaspoon weighs.
 * @example spoonsFor(3, 4, 'a pinch') // '¾ tsp'
 */
export function spoonsFor(massG: number, teaspoonG: number | undefined, pinch: string): string | null {
  if (teaspoonG === undefined || massG <= 0 || massG >= SPOONS_BELOW_G) return null;
  const teaspoons = massG / teaspoonG;
  return teaspoons < 0.0625 ? pinch : `${formatEighths(toSpoonSet(teaspoons))} tsp`;
}
