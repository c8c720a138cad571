import type { TinChartView } from './tin-chart.types.ts';

/** A chart by its recipe and flavours: 'Golden carving cake, Almond'. */
export function chartName(chart: Pick<TinChartView, 'recipe' | 'flavours'>): string {
  return [chart.recipe.name, ...chart.flavours.map((flavour) => flavour.name)].join(', ');
}
