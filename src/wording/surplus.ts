/** What a mix makes over, in fairy cakes; or what it falls short by. */
import { formatWholeGrams } from './mass.ts';
import type { Words } from './words.ts';

/** Less than this is nothing on a kitchen scale. */
export const NOTHING_G = 0.5;

function over(surplusG: number, caseG: number, words: Words): string {
  const cakes = Math.floor(surplusG / caseG + 1e-9);
  const restG = surplusG - cakes * caseG;
  const rest = restG < NOTHING_G ? null : `${formatWholeGrams(restG)} g`;
  const all = words.over(`${formatWholeGrams(surplusG)} g`);
  if (cakes === 0) return all;
  const parts = [words.fairyCakes(cakes), rest].filter((part) => part !== null);
  return `${all}: ${parts.join(` ${words.and} `)}`;
}

/**
 * Surplus of a mix in words.
 * @example surplusInWords(140, 25, enGB) // '140 g over: 5 fairy cakes and 15 g'
 * @example surplusInWords(-7.5, 25, enGB) // '7.5 g short, shared by volume'
 */
export function surplusInWords(surplusG: number, caseG: number, words: Words): string {
  if (Math.abs(surplusG) < NOTHING_G) return words.nothingOver;
  if (surplusG < 0) return words.short(`${formatWholeGrams(-surplusG)} g`);
  return over(surplusG, caseG, words);
}
