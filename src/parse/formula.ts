/**
 * One line of a formula: an id and an amount become shelled or weighed grams. Volumes need the ingredient's
 * density, spoons its teaspoon weight; eggs are counted at the size the recipe declares.
 */
import type { EggScheme } from '../domain/egg.ts';
import { formulaEntry } from '../domain/formula-entry.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { FormulaLine } from '../domain/recipe.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { suggest } from './nearest.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseEggCount } from './units/egg-size.ts';
import { parseMass } from './units/mass.ts';
import { tidy } from './units/number.ts';
import { parseVolume, type VolumeAsWritten } from './units/volume.ts';

/** The ingredients that formulas may name. */
export interface Shelf {
  ingredients: ReadonlyMap<string, Ingredient>;
  /** Ids that are there but wrong, so that their own problem is enough; null when none could be read. */
  broken: readonly string[] | null;
}

/** What one counted egg weighs in this recipe; null when nobody says. */
export interface CountedEgg {
  shelledG: number;
  scheme?: EggScheme;
}

const MASS_UNIT = /[\d¼-¾⅐-⅞] *(?:g|grams?|kg|kilograms?|oz|ounces?|lbs?|pounds?)\b/i;
const VOLUME_UNIT =
  /[\d¼-¾⅐-⅞] *(?:ml|l|mill?ilit(?:re|er)s?|lit(?:re|er)s?|tsp|tbsp|teaspoons?|tablespoons?|cups?|(?:u[sk] )?fl\.? oz|(?:uk )?pints?)\b/i;
const TEASPOON_ML = 5;

function gramsOfVolume(volume: VolumeAsWritten, ingredient: Ingredient): Result<number> {
  const spoon = volume.unit === 'tsp' || volume.unit === 'tbsp';
  if (spoon && ingredient.teaspoonG !== undefined)
    return succeed(tidy((volume.ml / TEASPOON_ML) * ingredient.teaspoonG));
  if (ingredient.densityGPerMl !== undefined) return succeed(tidy(volume.ml * ingredient.densityGPerMl));
  const name = quote(ingredient.id);
  if (spoon) {
    const hint = `Write grams, or add 'teaspoon: 4 g' to ${name} in ingredients.yaml.`;
    return refuse('teaspoon-missing', `Nobody has said what a teaspoon of ${name} weighs`, hint);
  }
  const hint = `Write grams, or add 'density: 1.03 g/ml' to ${name} in ingredients.yaml.`;
  return refuse('density-missing', `Nobody has said what a millilitre of ${name} weighs`, hint);
}

function eggGrams(text: string, ingredient: Ingredient, egg: CountedEgg | null): Result<number> {
  if (MASS_UNIT.test(text)) return parseMass(text);
  if (VOLUME_UNIT.test(text)) {
    return refuse(
      'egg-as-volume',
      `${quote(text)} measures eggs by volume`,
      'Write a count like 5, or a shelled weight like 250 g.',
    );
  }
  if (egg === null) {
    const hint = "Add 'egg_size: UK medium' above the formula, or write the eggs as a shelled weight: 250 g.";
    return refuse(
      'recipe-egg-size-missing',
      `${quote(text)} counts eggs, but neither the recipe nor the kitchen names a size`,
      hint,
    );
  }
  return parseEggCount(text, ingredient.eggPart ?? 'egg', egg);
}

function amountGrams(text: string, ingredient: Ingredient, egg: CountedEgg | null): Result<number> {
  if (ingredient.eggPart !== undefined) return eggGrams(text, ingredient, egg);
  if (!VOLUME_UNIT.test(text)) return parseMass(text);
  const volume = parseVolume(text);
  return volume.ok ? gramsOfVolume(volume.value, ingredient) : volume;
}

/** The ingredient a formula names; null (without a problem) when it is known to be broken. */
export function shelfItem(id: string, shelf: Shelf): Result<Ingredient | null> {
  const found = shelf.ingredients.get(id);
  if (found !== undefined) return succeed(found);
  if (shelf.broken === null || shelf.broken.includes(id)) return succeed(null);
  const known = [...shelf.ingredients.keys(), ...shelf.broken];
  const message = `There is no ingredient ${quote(id)} in ingredients.yaml`;
  return fail(error('ingredient-unknown', message, suggest(id, known, 'ingredients')));
}

/** A line of a formula, grams; its text is the amount as written. */
export function formulaLine(
  text: string,
  ingredient: Ingredient,
  egg: CountedEgg | null,
): Result<FormulaLine> {
  const grams = amountGrams(text, ingredient, egg);
  if (!grams.ok) return grams;
  return succeed({ ...formulaEntry(ingredient), grams: grams.value });
}
