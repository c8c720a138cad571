/**
 * What else must be said. Six colours: Regulation (EC) No 1333/2008 Annex V (from memory), told where the label
 * data of an ingredient name one of them. Alcohol: where it makes half a per cent of the finished cake or more, our
 * own rule; the list names it in any case. Allergens on the way of a sale at a distance: Article 14.
 */
import { quantiseG } from '../../domain/quantise.ts';
import type { Bowl } from './bowl.ts';
import { labelNameOf } from './ingredient-list.ts';

const COLOURS: readonly [string, RegExp][] = [
  ['tartrazine (E102)', /\bE ?102\b|tartrazine/i],
  ['quinoline yellow (E104)', /\bE ?104\b|quinoline yellow/i],
  ['sunset yellow (E110)', /\bE ?110\b|sunset yellow/i],
  ['carmoisine (E122)', /\bE ?122\b|carmoisine|azorubine/i],
  ['ponceau 4R (E124)', /\bE ?124\b|ponceau/i],
  ['allura red (E129)', /\bE ?129\b|allura red/i],
];

/** Those of the six colours that an ingredient or a part of one names. */
export function coloursIn({ lines }: Bowl): string[] {
  const texts = lines.flatMap(({ ingredient }) => [
    labelNameOf(ingredient),
    ...(ingredient.compound ?? []).map(({ name }) => name),
  ]);
  return COLOURS.filter(([, pattern]) => texts.some((text) => pattern.test(text))).map(([name]) => name);
}

const WORTH_SAYING = 0.005;

/** Label names of what brings alcohol, where there is enough of it together. */
export function alcoholIn({ lines, finishedG }: Bowl): string[] {
  const bringing = lines.filter(({ ingredient }) => (ingredient.nutrients?.alcoholG ?? 0) > 0);
  const alcoholG = bringing.reduce(
    (sum, { ingredient, grams }) => sum + (grams * (ingredient.nutrients?.alcoholG ?? 0)) / 100,
    0,
  );
  if (quantiseG(alcoholG) < finishedG * WORTH_SAYING) return [];
  return [...new Set(bringing.map(({ ingredient }) => labelNameOf(ingredient)))];
}
