/**
 * The tin chart of one recipe and its flavours: for every tin owned the batter, the weights and the whole
 * eggs, and the egg ladder for the question the other way round.
 */
import type { Warning } from '../domain/problem.ts';
import { formatBothLengths } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { bakeCautions, chartBake } from './bake-figures.ts';
import { chartCautions, madeWithoutCautions } from './chart-cautions.ts';
import { chartColumns } from './chart-columns.ts';
import { type ChartInput, type ChartMix, chartFormula, chartMixes } from './chart-mixes.ts';
import { basisText, chartNotes, chartSummary, eggSizeText } from './chart-notes.ts';
import { chartRow, SHARED_CODES } from './chart-row.ts';
import { eggLadderView } from './egg-ladder.ts';
import { heightFigure } from './figures.ts';
import type { TinChartView } from './tin-chart.types.ts';

export type { ChartInput } from './chart-mixes.ts';

/** The recipe's id, then its flavours': 'vanilla-sponge', 'vanilla-sponge--lemon'. */
export function chartId({ recipe, flavours }: ChartInput): string {
  return [recipe.id, ...(flavours?.flavourIds ?? [])].join('--');
}

function sharedWarnings(mixes: readonly ChartMix[], { flavours }: ChartInput): Warning[] {
  const shared = new Map<string, Warning>();
  for (const { mix } of mixes) {
    for (const warning of mix.warnings) {
      if (SHARED_CODES.has(warning.code) && !shared.has(warning.code)) shared.set(warning.code, warning);
    }
  }
  return [...shared.values(), ...(flavours?.warnings ?? [])];
}

/**
 * Tin chart of a recipe. Throws only for a recipe that the reader should have refused (no proven bake).
 * @example tinChartView({ kitchen, recipe, ingredients }).rows[0]?.batter.text
 */
export function tinChartView(
  input: ChartInput,
  mixes: readonly ChartMix[] = chartMixes(input),
): TinChartView {
  const { kitchen, recipe, flavours } = input;
  const words = wordsFor(kitchen.locale);
  const formula = chartFormula(input);
  const columns = chartColumns(formula, kitchen.egg);
  const rows = mixes.flatMap((mix) => chartRow(mix, columns, input, words));
  const named = flavours?.named ?? [];
  return {
    id: chartId(input),
    title: words.chart.title(
      recipe.name,
      named.map(({ name }) => name),
    ),
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    recipe: { id: recipe.id, name: recipe.name },
    flavours: named,
    summary: chartSummary(rows, words),
    finishedHeight: heightFigure(recipe.finishedHeightMm),
    finishedHeightText: formatBothLengths(recipe.finishedHeightMm, 'mm'),
    eggSizeText: eggSizeText(kitchen.egg, words),
    basisText: basisText(input, words),
    columns,
    rows,
    ladder: eggLadderView(input, words),
    notes: chartNotes(input, rows, mixes, words),
    cautions: [
      ...madeWithoutCautions(recipe.formula, formula, input.ingredients, words),
      ...chartCautions(formula, input.ingredients, words),
      ...bakeCautions(
        rows.map(({ bake }) => bake ?? null),
        kitchen.locale,
      ),
    ],
    warnings: sharedWarnings(mixes, input),
    bake: input.bakes ? chartBake(input.bakes, kitchen.locale) : null,
  };
}
