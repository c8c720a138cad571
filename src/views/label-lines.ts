/** What a label says, line by line, and what the short card says. */
import type { Label, LabelInput, ToldAllergen } from '../compute/labels/label.ts';
import type { Allergen } from '../domain/ingredient.ts';
import type { LabelWords } from '../wording/label/index.ts';
import { listInWords } from '../wording/list.ts';
import { formatNumber } from '../wording/number.ts';
import type { LabelLine, LabelRun } from './label.types.ts';
import { labelNutrition, nutritionText } from './label-nutrition.ts';
import { ingredientRuns, looseQuidText, namesRuns, plainRun, strongRun, wordsLine } from './label-runs.ts';

/** What lines are made from. */
export interface LabelParts {
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

/** Figures per portion go with how many there are: Regulation (EU) No 1169/2011 Article 33, 21 CFR 101.9(b) (from memory). */
function netLine(label: Label, words: LabelWords): LabelLine {
  const net = words.net(netText(label));
  if (label.portions === null || label.nutrition === null) return wordsLine('net', net);
  return wordsLine('net', `${net}. ${words.portions(label.portions)}`);
}

function dateLine({ durability }: Label, words: LabelWords): LabelLine {
  const lead = durability.kind === 'use by' ? words.use : words.best;
  if (durability.date !== null) return wordsLine('date', words.date(durability.date), lead);
  return {
    id: 'date',
    lead,
    runs: [plainRun(`(${words.dateToWrite(durability.keepsDays)})`)],
    toWrite: true,
  };
}

/** 'wheat (gluten)' on a card without a list; by their own names elsewhere. */
export const toldNames = (allergens: readonly ToldAllergen[]): string[] => [
  ...new Set(allergens.map(({ name }) => name)),
];

function mayContainLines({ label, words }: LabelParts): LabelLine[] {
  if (label.mayContain.length === 0) return [];
  const names = label.mayContain.map((allergen: Allergen) => words.allergens[allergen]);
  return [{ id: 'may-contain', lead: words.mayContain, runs: namesRuns(names), toWrite: false }];
}

/** A name that says what is left out needs the caution beside it: left out is not kept out. */
function crossContactLines({ label, words }: LabelParts): LabelLine[] {
  if (!/\bwithout\b/i.test(label.foodName)) return [];
  return [wordsLine('cross-contact', `${words.card.crossContact} ${words.card.ask}`)];
}

function seeLine({ label, words }: LabelParts): LabelLine[] {
  if (label.containsLine || label.allergens.length === 0) return [];
  const runs: LabelRun[] = [plainRun(words.seeCapitals), strongRun(words.boldCapitals), plainRun('.')];
  return [{ id: 'see', lead: '', runs, toWrite: false }];
}

function containsLine({ label, words }: LabelParts): LabelLine {
  const names = toldNames(label.allergens);
  const runs = names.length === 0 ? [plainRun(`${words.noneKnown}.`)] : namesRuns(names);
  return { id: 'contains', lead: words.contains, runs, toWrite: false };
}

function noticeLines({ label, words, and }: LabelParts): LabelLine[] {
  const list = (names: readonly string[]): string => listInWords(names, and);
  return [
    ...(label.colours.length === 0 ? [] : [wordsLine('colours', words.colours(list(label.colours)))]),
    ...(label.alcohol.length === 0 ? [] : [wordsLine('alcohol', words.alcohol(list(label.alcohol)))]),
    ...(label.inedible.length === 0 ? [] : [wordsLine('inedible', words.inedible(list(label.inedible)))]),
  ];
}

/** When a tier kept for another day is frozen, and until when it may then be eaten. */
function keptLines({ input, words }: LabelParts): LabelLine[] {
  const { frozen } = input.facts;
  if (frozen === undefined) return [];
  return [wordsLine('kept', words.kept(words.date(frozen.freezeOn), words.date(frozen.eatBy)))];
}

function businessLines({ input, words }: LabelParts): LabelLine[] {
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

function endLines({ label, words }: LabelParts): LabelLine[] {
  return [
    ...(label.reference === null ? [] : [wordsLine('order', words.order(label.reference))]),
    wordsLine('rules', words.rules(label.rules, words.date(label.rulesSince))),
  ];
}

/** The full label. */
export function labelLines(parts: LabelParts): LabelLine[] {
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
    netLine(label, words),
    dateLine(label, words),
    ...keptLines(parts),
    wordsLine('storage', input.settings.storage ?? words.storage[label.storage]),
    ...(nutrition === null ? [] : [wordsLine('nutrition', nutritionText(nutrition, label.rules, words))]),
    ...businessLines(parts),
    ...endLines(parts),
  ];
}

/** The short allergen card. */
export function cardLines(parts: LabelParts): LabelLine[] {
  const { words } = parts;
  return [
    containsLine(parts),
    ...mayContainLines(parts),
    ...noticeLines(parts).filter(({ id }) => id !== 'inedible'),
    wordsLine('cross-contact', `${words.card.crossContact} ${words.card.ask}`),
    ...endLines(parts),
  ];
}
