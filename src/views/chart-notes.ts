/** The sentences around a tin chart: what it says, what it rests on, how to read it. */
import { type YieldDensity, yieldDensity } from '../compute/batter/yield-density.ts';
import type { EggSetting } from '../domain/kitchen.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import { formatBothLengths } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { formatGrams, formatWholeGrams } from '../wording/mass.ts';
import { formatNumber, formatShare } from '../wording/number.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import type { ChartInput, ChartMix } from './chart-mixes.ts';
import type { TinChartRow } from './tin-chart.types.ts';

/** A tenth of a percent: what the words can show. */
const LEAST_CHANGE = 0.0005;

/** 'UK medium eggs, 51 g each without the shell'. */
export function eggSizeText(egg: EggSetting, words: Words): string {
  const grams = formatNumber(egg.shelledG, 1);
  return egg.source === 'weighed' || egg.size === null
    ? words.eggSizeOwn(grams)
    : words.eggSizeWith(words.eggSize(egg.size), grams);
}

/** What the log's bakes changed, '' where none joined in. */
function loggedText(density: YieldDensity, words: Words): string {
  if (density.logged.length === 0) return '';
  const change = quantiseRatio(density.gPerMl / density.provenGPerMl - 1);
  const shown = formatShare(Math.abs(change), 1);
  const share = Math.abs(change) < LEAST_CHANGE ? null : shown;
  return ` ${words.chart.basisLogged(density.logged.length, words.chart.changed(share, change > 0))}`;
}

/** Which proven bakes stand behind the chart, and which of the log. */
export function basisText({ recipe }: ChartInput, words: Words): string {
  const [only] = recipe.provenBakes;
  const density = yieldDensity(recipe);
  const logged = density === null ? '' : loggedText(density, words);
  if (only === undefined || recipe.provenBakes.length > 1) {
    const spread = formatShare(density?.spread ?? 0, 1);
    return `${words.chart.basisMany(recipe.provenBakes.length, spread)}${logged}`;
  }
  const tins = only.tins.map(({ tin, count }) => words.chart.countOfTin(count, tinSize(tin, words)));
  const height = formatBothLengths(only.finishedHeightMm, 'mm');
  return `${words.chart.basisOne(listInWords(tins, words.and), height, formatWholeGrams(only.batterG))}${logged}`;
}

/** The row whose mix fills its tins most nearly: the plainest example. */
function plainest(rows: readonly TinChartRow[]): TinChartRow | undefined {
  const off = (row: TinChartRow): number => Math.abs(row.surplus.value / row.batter.value);
  return rows.reduce<TinChartRow | undefined>(
    (best, row) => (best && off(best) <= off(row) ? best : row),
    undefined,
  );
}

/** One sentence that reads a row aloud. */
export function chartSummary(rows: readonly TinChartRow[], words: Words): string {
  const row = plainest(rows);
  if (row === undefined) return '';
  const tin = words.chart.countOfTin(row.count, row.tinName);
  if (row.eggs === null) return words.chart.summaryWithoutEggs(row.batter.text, tin);
  const rest = formatWholeGrams(row.batter.value - row.eggs.grams.value);
  return words.chart.summaryWithEggs(row.eggs.text, rest, row.batter.text, tin);
}

/** How to read the chart; only what occurs on it. */
export function chartNotes(
  { kitchen }: ChartInput,
  rows: readonly TinChartRow[],
  mixes: readonly ChartMix[],
  words: Words,
): string[] {
  const { notes } = words.chart;
  const tolerance = formatShare(kitchen.egg.tolerance);
  const counted = rows.some((row) => row.eggs !== null);
  const eggs = kitchen.egg.otherwise === 'weigh' ? notes.eggsWeighed(tolerance) : notes.eggs(tolerance);
  return [
    notes.rows,
    ...(counted ? [eggs] : []),
    notes.grams(formatGrams(kitchen.scale.stepG), formatGrams(kitchen.scale.fineStepG)),
    notes.surplus(formatGrams(kitchen.fairyCaseG)),
    notes.fill,
    notes.heights,
    ...(mixes.some(({ mix }) => mix.loads.length > 1) ? [notes.loads] : []),
    ...(counted ? [notes.ladder] : []),
  ];
}
