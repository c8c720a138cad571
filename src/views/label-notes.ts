/** What the baker should know of a label before using it. */
import type { Ingredient } from '../domain/ingredient.ts';
import type { LabelWords } from '../wording/label/index.ts';
import { listInWords } from '../wording/list.ts';
import type { LabelParts } from './label-lines.ts';

const ofInput = (ids: readonly string[], ingredients: readonly Ingredient[]): string[] =>
  ids.map((id) => (ingredients.find((one) => one.id === id)?.name ?? id).toLowerCase());

/** What the rules ask, what is missing, what ties: for the page, never on the label. */
export function labelNotes({ label, input, words, and }: LabelParts): string[] {
  const named = (elements: readonly (keyof LabelWords['needs'])[]): string =>
    listInWords(
      elements.map((element) => words.needs[element]),
      and,
    );
  return [
    label.needs.length === 0
      ? words.needsNothing(words.sale[label.sale])
      : words.needsLine(words.sale[label.sale], named(label.needs)),
    ...(words.saleNote[label.sale] === '' ? [] : [words.saleNote[label.sale]]),
    ...(label.gaps.length === 0 ? [] : [words.gaps(named(label.gaps))]),
    ...label.ties.map((tie) => words.ties(listInWords(tie, and))),
    ...(label.goneShare === 0 ? [] : [words.gone]),
    label.nutrition === null
      ? words.nutrition.missing(listInWords(ofInput(label.nutritionMissing, input.ingredients), and))
      : words.exempt,
    ...(label.nutrition !== null && label.nutrition.perPortion === null ? [words.nutrition.noPortion] : []),
  ];
}
