/** What an order contains, and how to answer when somebody asks; never that it is free from anything. */
import { allergensOf } from '../compute/allergens/allergens-of.ts';
import type { PlannedOrder } from '../compute/orders/plan-order.ts';
import type { Content } from '../domain/content.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { allergenNames } from './chart-cautions.ts';
import type { AllergenView } from './order.types.ts';

/** The allergens of everything in the order. */
export function orderAllergens(
  { uses }: Pick<PlannedOrder, 'uses'>,
  { kitchen, ingredients, label }: Pick<Content, 'kitchen' | 'ingredients' | 'label'>,
): AllergenView {
  const words = wordsFor(kitchen.locale);
  const { allergens: own } = orderWordsFor(kitchen.locale);
  const found = allergensOf(
    uses.map(({ ingredientId }) => ingredientId),
    ingredients,
  );
  const names = allergenNames(found.contained, words);
  const contained = new Set(found.contained.map(({ allergen }) => allergen));
  const others = label.mayContain.filter((allergen) => !contained.has(allergen));
  const unknown = found.unknownIds.map((id) =>
    (ingredients.find((item) => item.id === id)?.name ?? id).toLowerCase(),
  );
  const list = (items: string[]): string => listInWords(items, words.and);
  return {
    names,
    sentence: names.length === 0 ? own.none : own.contains(list(names)),
    unknown: unknown.length === 0 ? null : own.unknown(list(unknown)),
    mayContain: others.length === 0 ? null : own.mayContain(list(others.map((one) => words.allergens[one]))),
    ask: own.ask,
    notFree: own.notFree,
  };
}
