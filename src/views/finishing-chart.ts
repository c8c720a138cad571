/**
 * The finishing chart: for the cake from every tin what goes between its layers, around it and over it, what
 * to weigh for that, and the board, box, ribbon and paper that go with it.
 */

import { finishClashes } from '../compute/finishes/clashes.ts';
import { isPoured } from '../compute/finishes/poured.ts';
import type { Content } from '../domain/content.ts';
import type { Finish } from '../domain/finish.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Tin } from '../domain/tin.ts';
import { type FinishingWords, finishingWordsFor } from '../wording/finishing/index.ts';
import { formatBothLengths, formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams } from '../wording/mass.ts';
import { formatNumber } from '../wording/number.ts';
import type { Words } from '../wording/words.ts';
import { bySize } from './by-size.ts';
import { allergenCautions } from './chart-cautions.ts';
import type { Caution } from './figure.ts';
import { shareFigure } from './figures.ts';
import type { FinishingChartView, FinishSummary } from './finishing-chart.types.ts';
import { finishesInOrder, finishingColumns } from './finishing-columns.ts';
import { finishingRow } from './finishing-row.ts';
import { rememberedBy } from './remembered-by.ts';

export type FinishingContent = Pick<Content, 'kitchen' | 'ingredients' | 'finishes' | 'finishing'>;

/** Narrows the chart; everything when left out. */
export interface FinishingChoice {
  /** Sets a chart of some tins or finishes apart from the whole one. */
  id?: string;
  tinIds?: readonly string[];
  finishIds?: readonly string[];
}

function settingsInWords(settings: FinishingSettings, words: FinishingWords): FinishingChartView['settings'] {
  const { settings: names } = words;
  const mm = (length: number): string => formatLength(length, 'mm');
  return [
    { label: names.height, text: names.heightOf(formatBothLengths(settings.cakeHeightMm, 'mm')) },
    { label: names.layers, text: names.layersOf(settings.layers) },
    { label: names.dam, text: settings.damMm === 0 ? names.noDam : mm(settings.damMm) },
    { label: names.undercoat, text: mm(settings.undercoatMm) },
    { label: names.board, text: names.boardOf(mm(settings.boardMarginMm), mm(settings.boardThicknessMm)) },
    { label: names.box, text: names.boxOf(mm(settings.boxHeightClearanceMm)) },
    { label: names.ribbon, text: names.ribbonOf(mm(settings.ribbonOverlapMm)) },
  ];
}

function finishSummary(
  finish: Finish,
  { ingredients }: FinishingContent,
  words: Words,
  finishingWords: FinishingWords,
): FinishSummary {
  const parts = finish.parts.map((part) => `${part.name.toLowerCase()} ${formatNumber(part.parts, 2)}`);
  const ids = finish.parts.map(({ ingredientId }) => ingredientId);
  return {
    id: finish.id,
    name: finish.name,
    kind: finish.kind,
    kindText: finishingWords.kinds[finish.kind],
    partsText:
      parts.length === 1 ? finishingWords.onePart : finishingWords.parts(listInWords(parts, words.and)),
    keepsText: finishingWords.keeps(finish.keepsDays, finish.chilled),
    density: { value: finish.densityGPerMl, unit: 'g/mL', text: formatNumber(finish.densityGPerMl, 2) },
    loss: shareFigure(finish.lossShare),
    methodMarkdown: finish.methodMarkdown,
    cautions: allergenCautions(ids, ingredients, words),
  };
}

function chartNotes(
  content: FinishingContent,
  finishes: readonly Finish[],
  tins: readonly Tin[],
  { notes }: FinishingWords,
): string[] {
  const { scale } = content.kitchen;
  const has = (use: keyof Finish['use']): boolean => finishes.some((finish) => finish.use[use] !== undefined);
  return [
    notes.cake,
    ...(has('filling') ? [notes.filling] : []),
    ...(has('coating') ? [notes.coat] : []),
    ...(finishes.some(isPoured) ? [notes.poured(formatLength(content.finishing.undercoatMm, 'mm'))] : []),
    notes.made,
    ...(has('rolled') ? [notes.rolled(formatLength(content.finishing.undercoatMm, 'mm'))] : []),
    ...(tins.some(({ shape }) => shape.kind === 'dome') ? [notes.dome] : []),
    notes.board,
    notes.parts(formatGrams(scale.stepG), formatGrams(scale.fineStepG)),
  ];
}

function chartCautions(
  finishes: readonly Finish[],
  { ingredients }: FinishingContent,
  words: Words,
  { cautions }: FinishingWords,
): Caution[] {
  const ids = finishes.flatMap(({ parts }) => parts.map(({ ingredientId }) => ingredientId));
  const hot = finishes.some(({ kind, cookingLossShare }) => kind === 'syrup' || cookingLossShare > 0);
  return [
    ...allergenCautions(ids, ingredients, words),
    ...(finishes.some(({ chilled }) => chilled) ? [{ code: 'chilled', text: cautions.chilled }] : []),
    ...(hot ? [{ code: 'hot-sugar', text: cautions.hot }] : []),
    { code: 'supports', text: cautions.supports },
    { code: 'heavy', text: cautions.heavy },
  ];
}

function chosen<T extends { id: string }>(all: readonly T[], ids: readonly string[] | undefined): T[] {
  return all.filter(({ id }) => ids === undefined || ids.includes(id));
}

/**
 * The finishing chart of a kitchen, smallest tin first.
 * @example finishingChartView(content, { tinIds: ['round-8'] }).rows[0]?.ribbon.text
 */
export function finishingChartView(
  content: FinishingContent,
  { id = 'finishing', tinIds, finishIds }: FinishingChoice = {},
): FinishingChartView {
  const { kitchen, ingredients, finishing: settings } = content;
  const words = wordsFor(kitchen.locale);
  const finishingWords = finishingWordsFor(kitchen.locale);
  const finishes = finishesInOrder(chosen(content.finishes, finishIds));
  const tins = chosen(kitchen.tins, tinIds)
    .filter(({ owned }) => owned > 0)
    .sort(bySize);
  const columns = finishingColumns(finishes, settings, finishingWords);
  const input = { kitchen, ingredients, settings, words, finishingWords };
  const worked = tins.map((tin) => ({ tin, row: finishingRow(tin, finishes, columns, input) }));
  return {
    id,
    title: finishingWords.title,
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    summary: finishingWords.summary(formatLength(settings.cakeHeightMm, 'mm'), settings.layers),
    settings: settingsInWords(settings, finishingWords),
    columns,
    rows: worked.flatMap(({ row }) => row ?? []),
    finishes: finishes.map((finish) => finishSummary(finish, content, words, finishingWords)),
    leftOut: worked
      .filter(({ row }) => row === null)
      .map(({ tin }) => ({ id: tin.id, text: finishingWords.leftOut(tin.name) })),
    notes: chartNotes(content, finishes, tins, finishingWords),
    cautions: chartCautions(finishes, content, words, finishingWords),
    warnings: finishClashes(finishes).filter(({ code }) => code === 'cream-under-sheet'),
  };
}

/** The finishing charts of a kitchen: one, or none while it has no finishes. */
export const finishingCharts: (content: FinishingContent) => FinishingChartView[] = rememberedBy(
  ['kitchen', 'ingredients', 'finishes', 'finishing'],
  (content) => (content.finishes.length === 0 ? [] : [finishingChartView(content)]),
);
