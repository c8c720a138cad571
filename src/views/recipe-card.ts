/**
 * What goes on a recipe card? The chart's own figures for the tins it fills best, the method as written, the oven
 * on every dial, how to tell that the cake is done, and the cautions.
 */
import { type Kitchen, PLAIN_OVEN } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { dialTextsOf } from './bake-figures.ts';
import { methodPieces } from './method-text.ts';
import type { CardTin, RecipeCardView } from './recipe-card.types.ts';
import type { TinChartRow, TinChartView } from './tin-chart.types.ts';

export interface CardSource {
  kitchen: Kitchen;
  recipe: Recipe;
  chart: TinChartView;
  /** Only these tins; every owned one when left out. */
  tinIds?: readonly string[];
}

const share = ({ surplus, batter }: TinChartRow): number => Math.abs(surplus.value) / batter.value;

/** Tins the recipe was proven in, then the rest; those with warnings last; then least over or short. */
function bestFirst(rows: readonly TinChartRow[], { provenBakes }: Recipe): TinChartRow[] {
  const proven = new Set(provenBakes.flatMap(({ tins }) => tins.map(({ tin }) => tin.id)));
  const rank = (row: TinChartRow): number =>
    (row.warnings.length > 0 ? 2 : 0) + (proven.has(row.tinId) ? 0 : 1);
  return [...rows].sort(
    (a, b) => rank(a) - rank(b) || share(a) - share(b) || rows.indexOf(a) - rows.indexOf(b),
  );
}

function oneForEachTin(rows: readonly TinChartRow[]): TinChartRow[] {
  const seen = new Set<string>();
  return rows.filter(({ tinId }) => {
    if (seen.has(tinId)) return false;
    seen.add(tinId);
    return true;
  });
}

function cardTin(row: TinChartRow): CardTin {
  const { id, sizeText, eggs, batter, amounts, rawFill, finishedHeight, surplus, bake, warnings } = row;
  return {
    id,
    name: row.count > 1 ? `${row.count} × ${row.tinName}` : row.tinName,
    sizeText,
    eggs,
    batter,
    amounts,
    rawFill,
    finishedHeight,
    surplus,
    dial: bake?.dial ?? null,
    firstLook: bake?.firstLook ?? null,
    expectedBy: bake?.expectedBy ?? null,
    warnings: warnings.map(({ message }) => message),
  };
}

/** The card of one chart; its figures are the chart's. */
export function recipeCardView({ kitchen, recipe, chart, tinIds }: CardSource): RecipeCardView {
  const rows = chart.rows.filter(({ tinId }) => tinIds?.includes(tinId) ?? true);
  const best = oneForEachTin(bestFirst(rows, recipe));
  const { set, others } = dialTextsOf(recipe.ovenC, kitchen.oven ?? PLAIN_OVEN);
  const ready = wordsFor(kitchen.locale).cautions.ready;
  return {
    id: chart.id,
    title: chart.title,
    recipe: chart.recipe,
    kitchenName: chart.kitchenName,
    edition: chart.edition,
    summary: recipe.summary,
    ovenText: others === '' ? set : `${set} (${others})`,
    heightText: chart.finishedHeightText,
    eggSizeText: rows.some(({ eggs }) => eggs !== null) ? chart.eggSizeText : null,
    columns: chart.columns,
    tins: best.map(cardTin),
    sizeRank: best.map((row) => chart.rows.indexOf(row)),
    method: methodPieces(recipe.methodMarkdown),
    readyText: ready,
    cautions: chart.cautions.filter(({ code }) => code !== 'ready'),
  };
}
