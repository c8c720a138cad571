/** A label's text with its allergens bold and in capitals. */
import type { LabelEntry, LooseQuid, TextPiece } from '../compute/labels/label.ts';
import type { LabelWords } from '../wording/label/index.ts';
import { formatFixed, formatNumber } from '../wording/number.ts';
import type { LabelLine, LabelLineId, LabelRun } from './label.types.ts';

export const plainRun = (text: string): LabelRun => ({ text, strong: false });
export const strongRun = (text: string): LabelRun => ({ text: text.toUpperCase(), strong: true });

/** A line of plain words. */
export const wordsLine = (id: LabelLineId, text: string, lead = ''): LabelLine => ({
  id,
  lead,
  runs: text === '' ? [] : [plainRun(text)],
  toWrite: false,
});

const pieceRun = ({ text, allergen }: TextPiece): LabelRun =>
  allergen === null ? plainRun(text) : strongRun(text);

/** Neighbours of one kind become one run. */
function joined(runs: readonly LabelRun[]): LabelRun[] {
  const result: LabelRun[] = [];
  for (const { text, strong } of runs) {
    const last = result.at(-1);
    if (last !== undefined && last.strong === strong) last.text += text;
    else result.push({ text, strong });
  }
  return result;
}

/** '27.6 %': one decimal below ten per cent and above alike, as 3.1 % asks for. */
const percentText = (share: number): string => `${formatNumber(share * 100, 1)}\u00a0%`;

/** A percentage, or past the whole the grams that went into 100 g. */
function quidText(name: string, share: number, words: LabelWords): string {
  return share > 1 ? ` (${words.over100(name, formatNumber(share * 100, 0))})` : ` ${percentText(share)}`;
}

/** One ingredient: its name, its percentage, what it is made of. */
export function entryRuns({ name, pieces, namePieces, quid }: LabelEntry, words: LabelWords): LabelRun[] {
  const runs = pieces.map(pieceRun);
  if (quid === null) return joined(runs);
  const percentage = plainRun(quidText(name, quid, words));
  return joined([...runs.slice(0, namePieces), percentage, ...runs.slice(namePieces)]);
}

/** The whole list, its entries parted by commas. */
export function ingredientRuns(entries: readonly LabelEntry[], words: LabelWords): LabelRun[] {
  const runs = entries.flatMap((entry, at) => [
    ...(at === 0 ? [] : [plainRun(', ')]),
    ...entryRuns(entry, words),
  ]);
  return joined([...runs, plainRun('.')]);
}

/** 'jam 6.9 %, strawberry 3.1 %'. */
export const looseQuidText = (quids: readonly LooseQuid[], words: LabelWords): string =>
  quids
    .map(({ name, per100G }) =>
      per100G > 100
        ? words.over100(name.toLowerCase(), formatFixed(per100G, 0))
        : words.percentage(name.toLowerCase(), percentText(per100G / 100)),
    )
    .join(', ');

/** Allergens by name, each emphasised, parted by commas. */
export const namesRuns = (names: readonly string[]): LabelRun[] =>
  joined([
    ...names.flatMap((name, at) => [...(at === 0 ? [] : [plainRun(', ')]), strongRun(name)]),
    plainRun('.'),
  ]);
