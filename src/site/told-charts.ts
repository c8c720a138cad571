/** What pages other than a chart's own tell of the charts, which are asked for one after the other and not held. */
import type { Content } from '../domain/content.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { ChartViews } from '../views/chart-views.ts';
import { homeChart } from '../views/in-ounces.ts';
import { chartPath, type PageLink } from '../views/nav.ts';
import { structuredRecipe } from '../views/recipe-structured.ts';
import type { TinChartView } from '../views/tin-chart.types.ts';

/** What is told of a chart beside its page; the charts themselves are asked for one after the other. */
export interface ToldChart extends Pick<TinChartView, 'id' | 'recipe' | 'flavours'> {
  views: ChartViews;
}

export const toldChart = (views: ChartViews): ToldChart => {
  const { id, recipe, flavours } = views.chart;
  return { id, recipe, flavours, views };
};

export function* homeCharts(charts: readonly ChartViews[], kitchen: Kitchen): Generator<TinChartView> {
  for (const { chart } of charts) yield homeChart(chart, kitchen);
}

export function flavouredCharts(recipeId: string, charts: readonly ToldChart[]): PageLink[] {
  return charts
    .filter(({ recipe, flavours }) => recipe.id === recipeId && flavours.length > 0)
    .map(({ id, flavours }) => ({
      path: chartPath(id),
      text: flavours.map(({ name }) => name).join(', '),
    }));
}

/** Linked data as a page may hold it: no tag inside can end the script. */
export function structuredOf(recipeId: string, charts: readonly ToldChart[], content: Content): string {
  const recipe = content.recipes.find(({ id }) => id === recipeId);
  if (recipe === undefined) return '';
  const plain = charts.find((told) => told.recipe.id === recipeId && told.flavours.length === 0);
  return JSON.stringify(structuredRecipe(recipe, plain?.views.chart, content)).replaceAll('<', '\\u003c');
}
