/**
 * What fills cups and spoons: American cups to a quarter or a third, tablespoons below a quarter cup, teaspoons
 * below a tablespoon. Volumes by weight need the ingredient's own density, spooned and levelled as it was weighed.
 */
import { ML_PER } from '../domain/units.ts';
import { formatEighths } from './fraction.ts';
import { formatNumber } from './number.ts';

/** Parts of a cup that sets of measuring cups have. */
const CUP_PARTS: readonly (readonly [number, string])[] = [
  [0, ''],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [1 / 2, '½'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [1, ''],
];

/** A number of cups. @example cupsText(591) // '2½' */
export function cupsText(volumeMl: number): string {
  const cups = volumeMl / ML_PER.cup;
  const whole = Math.floor(cups);
  const [part, sign] = CUP_PARTS.reduce((best, one) =>
    Math.abs(one[0] - (cups - whole)) < Math.abs(best[0] - (cups - whole)) ? one : best,
  );
  const full = whole + (part === 1 ? 1 : 0);
  return full === 0 && sign !== '' ? sign : `${formatNumber(full, 0)}${sign}`;
}

const QUARTER_CUP_ML = ML_PER.cup / 4;
/** Nearer than this to a quarter cup it is told in cups. */
const NEAR = 0.94;

/**
 * A volume as it is measured out: '2¼ cups', '3 tbsp', '1½ tsp'.
 * @example measuredOut(118) // '½ cup'
 */
export function measuredOut(volumeMl: number): string {
  if (volumeMl >= QUARTER_CUP_ML * NEAR) {
    const cups = cupsText(volumeMl);
    return `${cups} ${/^[¼⅓½⅔¾1]$/.test(cups) ? 'cup' : 'cups'}`;
  }
  if (volumeMl >= ML_PER.tbsp * NEAR)
    return `${formatEighths(Math.round((volumeMl / ML_PER.tbsp) * 2) / 2)} tbsp`;
  return `${formatEighths(Math.max(1, Math.round((volumeMl / ML_PER.tsp) * 8)) / 8)} tsp`;
}
