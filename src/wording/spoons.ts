/**
 * Level spoons beside amounts too small for most kitchen scales. A teaspoon is 5 mL; the grams in one are the
 * ingredient's own.
 */
import { formatEighths } from './fraction.ts';

/** Amounts from this weight up are printed in grams only. */
const SPOONS_BELOW_G = 5;

/** Spoon sets go down to an eighth; above one spoonful quarters are near enough. */
function toSpoonSet(teaspoons: number): number {
  const parts = teaspoons < 1 ? 8 : 4;
  return Math.max(1, Math.round(teaspoons * parts)) / parts;
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
