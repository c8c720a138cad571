/** The ingredients across the top of a chart, and the amounts below them. */
import type { MixLine } from '../compute/mixes/mix.types.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { EggSetting } from '../domain/kitchen.ts';
import type { Formula } from '../domain/recipe.ts';
import { spoonsFor } from '../wording/spoons.ts';
import type { Words } from '../wording/words.ts';
import { weighedFigure } from './figures.ts';
import type { Amount, ChartColumn } from './tin-chart.types.ts';

/** Weighed ingredients in the bowl's order; eggs among them only where the kitchen may weigh beaten egg. */
export function chartColumns(formula: Formula, egg: EggSetting): ChartColumn[] {
  return formula
    .filter((line) => line.grams > 0 && (line.eggPart === undefined || egg.otherwise === 'weigh'))
    .map(({ ingredientId, name, fine }) => ({ id: ingredientId, name, fine }));
}

/** One amount per column, same order. */
export function chartAmounts(
  columns: readonly ChartColumn[],
  lines: readonly MixLine[],
  ingredients: readonly Ingredient[],
  words: Words,
): Amount[] {
  return columns.map(({ id }) => {
    const grams = lines.find((line) => line.ingredientId === id)?.grams ?? 0;
    const item = ingredients.find((ingredient) => ingredient.id === id);
    return { figure: weighedFigure(grams), spoons: spoonsFor(grams, item, words) };
  });
}
