/** Cautions that belong on a chart: raw batter, hot tins, allergens, and when a cake is ready. */
import type { Ingredient } from '../domain/ingredient.ts';
import type { Formula } from '../domain/recipe.ts';
import { listInWords } from '../wording/list.ts';
import type { Words } from '../wording/words.ts';
import type { Caution } from './figure.ts';

function allergenNames(used: readonly Ingredient[], words: Words): string[] {
  const names = used.flatMap((ingredient) =>
    (ingredient.allergens ?? []).map((allergen) => {
      const named = ingredient.allergenNames?.[allergen];
      return named === undefined ? words.allergens[allergen] : `${named} (${words.allergens[allergen]})`;
    }),
  );
  return [...new Set(names)];
}

/** Allergens that the ingredients are known to contain, and the ingredients nobody has filled in. */
function allergenCautions(used: readonly Ingredient[], words: Words): Caution[] {
  const contained = allergenNames(used, words);
  const unknown = used.filter((one) => one.allergens === undefined).map((one) => one.name.toLowerCase());
  const { allergens, 'allergens-unknown': notKnown } = words.cautions;
  return [
    ...(contained.length === 0
      ? []
      : [{ code: 'allergens', text: allergens(listInWords(contained, words.and)) }]),
    ...(unknown.length === 0
      ? []
      : [{ code: 'allergens-unknown', text: notKnown(listInWords(unknown, words.and)) }]),
  ];
}

/** Cautions for a formula, most pressing first. */
export function chartCautions(formula: Formula, ingredients: readonly Ingredient[], words: Words): Caution[] {
  const used = formula.flatMap((line) => ingredients.find((one) => one.id === line.ingredientId) ?? []);
  const { 'raw-batter': raw, 'hot-tins': hot, ready } = words.cautions;
  return [
    ...allergenCautions(used, words),
    { code: 'raw-batter', text: raw },
    { code: 'hot-tins', text: hot },
    { code: 'ready', text: ready },
  ];
}
