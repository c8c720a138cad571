/** The label of a cake as plain data, from the same input for a tier of an order and for a sample of a recipe. */
import { type Label, type LabelInput, labelOf, type ToldAllergen } from '../compute/labels/label.ts';
import type { Allergen, Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { formatDate } from '../wording/date.ts';
import { type LabelWords, labelWordsFor } from '../wording/label/index.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatFixed, formatNumber, formatShare } from '../wording/number.ts';
import type { LabelIngredient, LabelLine, LabelOutcome, LabelRun, LabelView } from './label.types.ts';
import { labelNutrition, nutritionText } from './label-nutrition.ts';
import {
  entryRuns,
  ingredientRuns,
  looseQuidText,
  namesRuns,
  plainRun,
  strongRun,
  wordsLine,
} from './label-runs.ts';

type LabelKitchen = Pick<Kitchen, 'name' | 'edition' | 'locale'>;

interface Parts {
  label: Label;
  input: LabelInput;
  words: LabelWords;
  and: string;
}

/** Whole grams, and under US rules ounces before them. Weighed cakes are never lighter than they say: rounded down. */
function netText({ finishedG, rules }: Label): string {
  const step = finishedG < 100 ? 1 : 5;
  const grams = `${formatNumber(Math.floor(finishedG / step) * step, 0)}\u00a0g`;
  if (rules !== 'US') return grams;
  const ounces = Math.floor((finishedG / 28.349523125) * 10) / 10;
  const pounds = Math.floor(ounces / 16);
  const rest = formatNumber(ounces - pounds * 16, 1);
  return pounds === 0 ? `${rest}\u00a0oz (${grams})` : `${pounds}\u00a0lb ${rest}\u00a0oz (${grams})`;
}

function dateLine({ durability }: Label, words: LabelWords): LabelLine {
  const lead = durability.kind === 'use by' ? words.use : words.best;
  if (durability.date !== null) return wordsLine('date', formatDate(durability.date), lead);
  return {
    id: 'date',
    lead,
    runs: [plainRun(`(${words.dateToWrite(durability.keepsDays)})`)],
    toWrite: true,
  };
}

/** 'wheat (gluten)' on a card without a list; by their own names elsewhere. */
const toldNames = (allergens: readonly ToldAllergen[]): string[] => [
  ...new Set(allergens.map(({ name }) => name)),
];

function mayContainLines({ label, words }: Parts): LabelLine[] {
  if (label.mayContain.length === 0) return [];
  const names = label.mayContain.map((allergen: Allergen) => words.allergens[allergen]);
  return [{ id: 'may-contain', lead: words.mayContain, runs: namesRuns(names), toWrite: false }];
}

/** A name that says what is left out needs the caution beside it: left out is not kept out. */
function crossContactLines({ label, words }: Parts): LabelLine[] {
  if (!/\bwithout\b/i.test(label.foodName)) return [];
  return [wordsLine('cross-contact', `${words.card.crossContact} ${words.card.ask}`)];
}

function seeLine({ label, words }: Parts): LabelLine[] {
  if (label.containsLine || label.allergens.length === 0) return [];
  const runs: LabelRun[] = [plainRun(words.seeCapitals), strongRun(words.boldCapitals), plainRun('.')];
  return [{ id: 'see', lead: '', runs, toWrite: false }];
}

function containsLine({ label, words }: Parts): LabelLine {
  const names = toldNames(label.allergens);
  const runs = names.length === 0 ? [plainRun(`${words.noneKnown}.`)] : namesRuns(names);
  return { id: 'contains', lead: words.contains, runs, toWrite: false };
}

function noticeLines({ label, words, and }: Parts): LabelLine[] {
  const list = (names: readonly string[]): string => listInWords(names, and);
  return [
    ...(label.colours.length === 0 ? [] : [wordsLine('colours', words.colours(list(label.colours)))]),
    ...(label.alcohol.length === 0 ? [] : [wordsLine('alcohol', words.alcohol(list(label.alcohol)))]),
    ...(label.inedible.length === 0 ? [] : [wordsLine('inedible', words.inedible(list(label.inedible)))]),
  ];
}

function businessLines({ input, words }: Parts): LabelLine[] {
  const { business } = input;
  if (business === null) return [];
  const { name, address, contact } = business;
  return [
    wordsLine(
      'business',
      [name, ...address, ...(contact === undefined ? [] : [contact])].join(', '),
      words.madeBy,
    ),
  ];
}

function endLines({ label, words }: Parts): LabelLine[] {
  return [
    ...(label.reference === null ? [] : [wordsLine('order', words.order(label.reference))]),
    wordsLine('rules', words.rules(label.rules, formatDate(label.rulesSince))),
  ];
}

function labelLines(parts: Parts): LabelLine[] {
  const { label, input, words } = parts;
  const loose = looseQuidText(label.looseQuids, words);
  const nutrition = labelNutrition(label.nutrition, label.rules, words);
  return [
    {
      id: 'ingredients',
      lead: words.ingredients,
      runs: ingredientRuns(label.entries, words),
      toWrite: false,
    },
    ...(loose === '' ? [] : [wordsLine('percentages', words.percentages(loose))]),
    ...(label.containsLine && label.allergens.length > 0 ? [containsLine(parts)] : seeLine(parts)),
    ...mayContainLines(parts),
    ...crossContactLines(parts),
    ...noticeLines(parts),
    wordsLine('net', words.net(netText(label))),
    dateLine(label, words),
    wordsLine('storage', input.settings.storage ?? words.storage[label.storage]),
    ...(nutrition === null ? [] : [wordsLine('nutrition', nutritionText(nutrition, words))]),
    ...businessLines(parts),
    ...endLines(parts),
  ];
}

function cardLines(parts: Parts): LabelLine[] {
  const { words } = parts;
  return [
    containsLine(parts),
    ...mayContainLines(parts),
    ...noticeLines(parts).filter(({ id }) => id !== 'inedible'),
    wordsLine('cross-contact', `${words.card.crossContact} ${words.card.ask}`),
    ...endLines(parts),
  ];
}

const ofInput = (ids: readonly string[], ingredients: readonly Ingredient[]): string[] =>
  ids.map((id) => (ingredients.find((one) => one.id === id)?.name ?? id).toLowerCase());

function notesOf({ label, input, words, and }: Parts): string[] {
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
  ];
}

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

function viewOf(parts: Parts, kitchen: LabelKitchen): LabelView {
  const { label, input, words } = parts;
  const { keepsDays } = label.durability;
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
    keepsText: words.keeps(keepsDays, label.durability.decidedBy),
    storageText: input.settings.storage ?? words.storage[label.storage],
    notes: notesOf(parts),
    cautions: [
      { code: 'label-draft', text: words.draft },
      ...label.warnings.map(({ code, message }) => ({ code, text: message })),
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
  const label = labelOf(input);
  if (!label.ok) {
    const refusals = label.problems.map(({ code, message, hint }) => ({
      code,
      text: message,
      hint: hint ?? '',
    }));
    return { id, foodName, view: null, refusals };
  }
  const parts: Parts = {
    label: label.value,
    input,
    words: labelWordsFor(kitchen.locale),
    and: wordsFor(kitchen.locale).and,
  };
  return { id, foodName, view: viewOf(parts, kitchen), refusals: [] };
}
