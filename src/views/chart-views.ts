/** Every chart of the kitchen with its working: each recipe plain, then with its flavours. */

import type { Flavour } from '../domain/flavour.ts';
import type { Recipe } from '../domain/recipe.ts';
import { bakeGuideView } from './bake-guide.ts';
import type { BakeGuideView } from './bake-guide.types.ts';
import { bakesOfRecipes, type ChartContent, chartCombinations, chartInput } from './chart-inputs.ts';
import { chartMixes } from './chart-mixes.ts';
import { tinChartView } from './tin-chart.ts';
import type { TinChartView } from './tin-chart.types.ts';
import { workingTitle, workingView } from './working.ts';
import type { WorkingView } from './working.types.ts';

export interface ChartViews {
  /** Of a large kitchen it is unpacked when it is asked for: whoever goes through all charts lets each go. */
  readonly chart: TinChartView;
  workingTitle: string;
  /** Ten times as large as the chart: worked out whenever it is asked for, and held by nobody here. */
  working(): WorkingView;
  /** How the plain recipe behaves in the oven; null on its flavours' charts, which bake alike. */
  guide: BakeGuideView | null;
}

/** What sheets are drawn from: the working is for the site alone. */
export type PrintedViews = Pick<ChartViews, 'chart' | 'guide'>;

/** Gives back what was made under the same key before, or makes it; the key is everything it is made from. */
export type Remember = <T>(key: string, make: () => T) => T;

const makeAlways: Remember = (_key, make) => make();

/** Keeps a plain value in little room, and gives back one that is equal. */
export interface Packing {
  /** Rows that all charts together may have before they are packed; a row takes about 7 kB. */
  mostRows: number;
  pack(value: unknown): Uint8Array;
  unpack(packed: Uint8Array): unknown;
}

/** The one chart that was unpacked last: it is often asked for several times in turn. */
let unpacked: { packed: Uint8Array; chart: TinChartView } | null = null;

function unpackedChart(packed: Uint8Array, { unpack }: Packing): TinChartView {
  if (unpacked?.packed !== packed) unpacked = { packed, chart: unpack(packed) as TinChartView };
  return unpacked.chart;
}

function packedViews({ chart, ...rest }: ChartViews, packing: Packing): ChartViews {
  const packed = packing.pack(chart);
  return {
    ...rest,
    get chart() {
      return unpackedChart(packed, packing);
    },
  };
}

interface ChartsOfRecipe {
  recipe: Recipe;
  /** Of each chart, the plain one first. */
  flavours: Flavour[][];
  /** What the kitchen's other recipes have no part in. */
  around: Pick<ChartContent, 'kitchen' | 'ingredients' | 'altitudeM' | 'bakeLog'>;
}

function byRecipe(content: ChartContent): ChartsOfRecipe[] {
  const { kitchen, ingredients, altitudeM = null, bakeLog = [] } = content;
  const combinations = chartCombinations(content);
  return content.recipes.map((recipe) => ({
    recipe,
    flavours: combinations.filter((one) => one.recipe === recipe).map(({ flavours }) => flavours),
    around: {
      kitchen,
      ingredients,
      altitudeM,
      bakeLog: bakeLog.filter(({ recipeId }) => recipeId === recipe.id),
    },
  }));
}

function chartsOf({ recipe, flavours: all, around }: ChartsOfRecipe): ChartViews[] {
  const bakes = bakesOfRecipes({ ...around, recipes: [recipe] }).get(recipe.id);
  return all.map((flavours) => {
    const input = chartInput({ ...around, recipes: [recipe] }, recipe, flavours, bakes);
    const mixes = chartMixes(input);
    const isPlain = (input.flavours?.named ?? []).length === 0;
    return {
      chart: tinChartView(input, mixes),
      workingTitle: workingTitle(input),
      working: () => workingView(input),
      guide:
        isPlain && input.bakes ? bakeGuideView(input.bakes, input.kitchen, around.altitudeM ?? null) : null,
    };
  });
}

/**
 * Charts of all recipes as they are written and in every flavour made for them; those of a large kitchen are packed
 * as soon as they are made, where it is told how.
 */
export function chartViews(
  content: ChartContent,
  remember: Remember = makeAlways,
  packing?: Packing,
): ChartViews[] {
  const all = byRecipe(content);
  const count = all.reduce((sum, { flavours }) => sum + flavours.length, 0);
  const isLarge = packing !== undefined && count * content.kitchen.tins.length > packing.mostRows;
  return all.flatMap((one) =>
    remember(JSON.stringify(one), () => {
      const charts = chartsOf(one);
      return isLarge ? charts.map((views) => packedViews(views, packing)) : charts;
    }),
  );
}
