/** One row of the tin chart. */

import type { Kitchen } from '../domain/kitchen.ts';
import type { Warning } from '../domain/problem.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import { capitalised } from '../wording/sentence-case.ts';
import { surplusInWords } from '../wording/surplus.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { bakedFigure, bakeFigures } from './bake-figures.ts';
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
  { kitchen, ingredients, bakes }: ChartInput,
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
      receives: totalFigure(filled.receivesG),
      batter: totalFigure(mix.batterG),
      eggs: eggFigures(mix.eggs, mix.lines, words),
      amounts: chartAmounts(columns, mix.lines, ingredients, words),
      rawFill: heightFigure(filled.rawFillMm),
      rawFillShare: shareFigure(quantiseRatio(filled.rawFillMm / tin.depthMm)),
      finishedHeight: heightFigure(filled.finishedHeightMm),
      surplus: totalFigure(mix.surplusG),
      surplusText: surplusText(mix.surplusG, kitchen, words),
      warnings: rowWarnings(mix.warnings, tin.name, words),
      baked: bakes ? bakedFigure(filled.receivesG, bakes) : null,
      bake: bakes ? bakeFigures(bakes, tin, filled.finishedHeightMm, kitchen.locale) : null,
    },
  ];
}

/** Warnings that would say the same on many rows stand once on the chart. */
export const SHARED_CODES: ReadonlySet<string> = new Set(['bakes-disagree', 'bowl-low']);

/** A row says whose it is already: a warning that starts with the tin's name starts after it. */
function rowWarnings(warnings: Warning[], tinName: string, words: Words): Warning[] {
  const own = `${tinName}: `;
  return warnings
    .filter(({ code }) => !SHARED_CODES.has(code))
    .map(({ code, message }) => {
      if (!message.startsWith(own)) return { code, message: words.warning(message, [tinName]) };
      const rest = words.warning(message.slice(own.length), [tinName]);
      return { code, message: capitalised(rest) };
    });
}
