/** Every chart of the kitchen with its working, in the order of the recipes. */
import type { Content } from '../domain/content.ts';
import { chartMixes } from './chart-mixes.ts';
import { tinChartView } from './tin-chart.ts';
import type { TinChartView } from './tin-chart.types.ts';
import { workingView } from './working.ts';
import type { WorkingView } from './working.types.ts';

export interface ChartViews {
  chart: TinChartView;
  working: WorkingView;
}

/** Charts of all recipes as they are written; flavoured ones come with their flavours. */
export function chartViews(content: Pick<Content, 'kitchen' | 'ingredients' | 'recipes'>): ChartViews[] {
  const { kitchen, ingredients, recipes } = content;
  return recipes.map((recipe) => {
    const input = { kitchen, recipe, ingredients };
    const mixes = chartMixes(input);
    return { chart: tinChartView(input, mixes), working: workingView(input, mixes) };
  });
}
