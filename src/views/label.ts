/** The label of a cake as plain data, from the same input for a tier of an order and for a sample of a recipe. */
import { type Label, type LabelInput, labelOf } from '../compute/labels/label.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { type LabelWords, labelWordsFor } from '../wording/label/index.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatFixed, formatNumber, formatShare } from '../wording/number.ts';
import type { LabelIngredient, LabelOutcome, LabelView } from './label.types.ts';
import { cardLines, type LabelParts, labelLines, toldNames } from './label-lines.ts';
import { labelNotes } from './label-notes.ts';
import { labelNutrition } from './label-nutrition.ts';
import { entryRuns } from './label-runs.ts';

type LabelKitchen = Pick<Kitchen, 'name' | 'edition' | 'locale'>;

function ingredientOf(entry: Label['entries'][number], words: LabelWords): LabelIngredient {
  const { name, bowlG, share, quid } = entry;
  return {
    name,
    text: entryRuns(entry, words)
      .map(({ text }) => text)
      .join(''),
    bowl: { value: bowlG, unit: 'g', text: formatFixed(bowlG, 1) },
    share: { value: share, unit: 'share', text: formatShare(share, 2) },
    quid: quid === null ? null : { value: quid, unit: 'share', text: formatShare(quid, 1) },
  };
}

function viewOf(parts: LabelParts, kitchen: LabelKitchen): LabelView {
  const { label, input, words } = parts;
  const { warning } = wordsFor(kitchen.locale);
  const { keepsDays, decidedBy, countsFrom } = label.durability;
  return {
    id: label.id,
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    foodName: label.foodName,
    rules: label.rules,
    sale: label.sale,
    lines: labelLines(parts),
    card: cardLines(parts),
    nutrition: labelNutrition(label.nutrition, label.rules, words),
    ingredients: label.entries.map((entry) => ingredientOf(entry, words)),
    allergens: toldNames(label.allergens),
    mayContain: label.mayContain.map((allergen) => words.allergens[allergen]),
    finished: { value: label.finishedG, unit: 'g', text: formatNumber(label.finishedG, 0) },
    keeps: { value: keepsDays, unit: 'days', text: formatNumber(keepsDays, 0) },
    keepsText: words.keeps(keepsDays, decidedBy, countsFrom === null ? null : words.date(countsFrom)),
    storageText: input.settings.storage ?? words.storage[label.storage],
    notes: labelNotes(parts),
    cautions: [
      { code: 'label-draft', text: words.draft },
      ...label.warnings.map(({ code, message }) => ({ code, text: warning(message, [label.foodName]) })),
    ],
    xHeightMm: input.settings.xHeightMm,
    sizes: [...input.settings.sizes],
  };
}

/**
 * A label ready to draw, or every reason why there is none; see labelOf for the codes.
 * @example labelOutcome(input, kitchen).view?.lines[0]?.runs // 'sugar, butter (', 'MILK', '), …'
 */
export function labelOutcome(input: LabelInput, kitchen: LabelKitchen): LabelOutcome {
  const { id, foodName } = input;
  const { warning } = wordsFor(kitchen.locale);
  const label = labelOf(input);
  if (!label.ok) {
    const refusals = label.problems.map(({ code, message, hint }) => ({
      code,
      text: warning(message, [foodName]),
      hint: warning(hint ?? '', [foodName]),
    }));
    return { id, foodName, view: null, refusals };
  }
  const parts: LabelParts = {
    label: label.value,
    input,
    words: labelWordsFor(kitchen.locale),
    and: wordsFor(kitchen.locale).and,
  };
  return { id, foodName, view: viewOf(parts, kitchen), refusals: [] };
}
