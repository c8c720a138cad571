/** Cautions that belong on a chart: raw batter, hot tins, allergens, and when a cake is ready. */
import { allergenChange, allergensOf, type ContainedAllergen } from '../compute/allergens/allergens-of.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Formula } from '../domain/recipe.ts';
import { listInWords } from '../wording/list.ts';
import type { Words } from '../wording/words.ts';
import type { Caution } from './figure.ts';

type IngredientIds = readonly { ingredientId: string }[];

const idsOf = (lines: IngredientIds): string[] => lines.map(({ ingredientId }) => ingredientId);

/** 'wheat (gluten)', 'milk': as a caution lists them, each once. */
export function allergenNames(contained: readonly ContainedAllergen[], words: Words): string[] {
  const names = contained.map(({ allergen, name }) =>
    name === null ? words.allergens[allergen] : `${name} (${words.allergens[allergen]})`,
  );
  return [...new Set(names)];
}

/** Names of ingredients as they stand in a sentence. */
function namesInSentence(ids: readonly string[], ingredients: readonly Ingredient[]): string[] {
  return ids.map((id) => (ingredients.find((one) => one.id === id)?.name ?? id).toLowerCase());
}

/** Allergens that the ingredients are known to contain, and the ingredients nobody has filled in. */
export function allergenCautions(
  ingredientIds: readonly string[],
  ingredients: readonly Ingredient[],
  words: Words,
): Caution[] {
  const { contained, unknownIds } = allergensOf(ingredientIds, ingredients);
  const { allergens, 'allergens-unknown': notKnown } = words.cautions;
  const names = allergenNames(contained, words);
  const unknown = namesInSentence(unknownIds, ingredients);
  return [
    ...(names.length === 0 ? [] : [{ code: 'allergens', text: allergens(listInWords(names, words.and)) }]),
    ...(unknown.length === 0
      ? []
      : [{ code: 'allergens-unknown', text: notKnown(listInWords(unknown, words.and)) }]),
  ];
}

/** What a changed formula leaves out of the base's allergens: made without, which is not free from. */
export function madeWithoutCautions(
  base: IngredientIds,
  changed: IngredientIds,
  ingredients: readonly Ingredient[],
  words: Words,
): Caution[] {
  const { leftOut } = allergenChange(
    allergensOf(idsOf(base), ingredients),
    allergensOf(idsOf(changed), ingredients),
  );
  if (leftOut.length === 0) return [];
  const names = leftOut.map(({ allergen, name }) => name ?? words.allergens[allergen]);
  const text = words.cautions['made-without'](listInWords([...new Set(names)], words.and));
  return [{ code: 'made-without', text }];
}

/** Cautions for a formula, most pressing first. */
export function chartCautions(formula: Formula, ingredients: readonly Ingredient[], words: Words): Caution[] {
  const { 'raw-batter': raw, 'hot-tins': hot, ready } = words.cautions;
  return [
    ...allergenCautions(idsOf(formula), ingredients, words),
    { code: 'raw-batter', text: raw },
    { code: 'hot-tins', text: hot },
    { code: 'ready', text: ready },
  ];
}
