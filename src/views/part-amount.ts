/** A part of a finish as it is weighed, with its spoons, or how many eggs it comes from. */
import { PART_SHARE } from '../domain/egg.ts';
import type { FinishPart } from '../domain/finish.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import { finishingWordsFor } from '../wording/finishing/index.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { spoonsFor } from '../wording/spoons.ts';
import { weighedFigure } from './figures.ts';
import type { Amount } from './tin-chart.types.ts';

interface Shelf {
  kitchen: Kitchen;
  ingredients: readonly Ingredient[];
}

function beside(part: FinishPart, grams: number, { kitchen, ingredients }: Shelf): string | null {
  const words = wordsFor(kitchen.locale);
  if (part.eggPart === undefined) {
    const item = ingredients.find(({ id }) => id === part.ingredientId);
    return spoonsFor(grams, item, words);
  }
  const eachG = kitchen.egg.shelledG * PART_SHARE[part.eggPart];
  const count = Math.ceil(quantiseRatio(grams / eachG));
  const { one, many } = words.eggParts[part.eggPart];
  return finishingWordsFor(kitchen.locale).fromEggs(count, count === 1 ? one : many);
}

/** `grams` as the scale weighs it. */
export const partAmount = (part: FinishPart, grams: number, shelf: Shelf): Amount => ({
  figure: weighedFigure(grams),
  spoons: beside(part, grams, shelf),
});
