/** How much of an ingredient a pack or a shelf holds: g for what is weighed, a count for whole eggs. */
import type { Ingredient } from '../domain/ingredient.ts';
import { type Result, succeed } from '../domain/result.ts';
import { refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseMass } from './units/mass.ts';
import { tidy } from './units/number.ts';
import { parseVolume } from './units/volume.ts';

const VOLUME = /\d *(ml|l|mill?ilit(re|er)s?|lit(re|er)s?|(u[sk] )?fl\.? oz|(uk )?pints?)$/i;
const NOTHING = /^0 *(g|kg|ml|l)$/;
const MOST_EGGS = 1000;

type Measured = Pick<Ingredient, 'id' | 'eggPart' | 'densityGPerMl'>;

function eggs(text: string, zero: boolean): Result<number> {
  const count = /^\d{1,4}$/.test(text) ? Number(text) : -1;
  if (count >= (zero ? 0 : 1) && count <= MOST_EGGS) return succeed(count);
  const message = `${quote(text)} is not a number of eggs`;
  return refuse('egg-count-unreadable', message, 'Count them, without a unit: 12.');
}

/**
 * '1 kg', '500 ml' (with a density), '12' (whole eggs). Fails on anything else, and on nothing unless allowed.
 * @example amountOnShelf('500 ml', { id: 'milk', densityGPerMl: 1.03 }) // 515
 */
export function amountOnShelf(written: string, item: Measured, zero = false): Result<number> {
  const text = written.trim();
  if (item.eggPart === 'egg') return eggs(text, zero);
  if (zero && NOTHING.test(text)) return succeed(0);
  if (!VOLUME.test(text)) return parseMass(text);
  const volume = parseVolume(text);
  if (!volume.ok) return volume;
  if (item.densityGPerMl !== undefined) return succeed(tidy(volume.value.ml * item.densityGPerMl));
  const hint = `Write grams, or add 'density: 1.03 g/ml' to ${quote(item.id)} in ingredients.yaml.`;
  return refuse('density-missing', `Nobody has said what a millilitre of ${quote(item.id)} weighs`, hint);
}
