/** One row of the tin chart. */
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import { surplusInWords } from '../wording/surplus.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { chartAmounts } from './chart-columns.ts';
import type { ChartInput, ChartMix } from './chart-mixes.ts';
import { eggFigures } from './egg-figures.ts';
import { heightFigure, shareFigure, totalFigure, volumeFigure } from './figures.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { ChartColumn, TinChartRow } from './tin-chart.types.ts';

const surplusText = (surplusG: number, kitchen: Kitchen, words: Words): string =>
  surplusInWords(surplusG, kitchen.fairyCaseG, words);

/** Figures of a mix of one kind of tin, in the order of `columns`. */
export function chartRow(
  { id, tin, count, mix }: ChartMix,
  columns: ChartColumn[],
  { kitchen, ingredients }: ChartInput,
  words: Words,
): TinChartRow[] {
  const [filled] = mix.tins;
  if (filled === undefined) return [];
  return [
    {
      id,
      tinId: tin.id,
      tinName: tin.name,
      sizeText: tinSize(tin, words),
      otherSizeText: tinOtherSize(tin, words),
      count,
      owned: tin.owned,
      picture: pictureOfTin(tin, words),
      volume: volumeFigure(filled.volumeMl),
      batterEach: totalFigure(filled.batterGEach),
      batter: totalFigure(mix.batterG),
      eggs: eggFigures(mix.eggs, mix.lines, words),
      amounts: chartAmounts(columns, mix.lines, ingredients, words),
      rawFill: heightFigure(filled.rawFillMm),
      rawFillShare: shareFigure(quantiseRatio(filled.rawFillMm / tin.depthMm)),
      finishedHeight: heightFigure(filled.finishedHeightMm),
      surplus: totalFigure(mix.surplusG),
      surplusText: surplusText(mix.surplusG, kitchen, words),
      warnings: mix.warnings.filter((warning) => !SHARED_CODES.has(warning.code)),
    },
  ];
}

/** Warnings about the recipe or its flavours stand once on the chart, not on every row. */
export const SHARED_CODES: ReadonlySet<string> = new Set(['bakes-disagree']);
