/** Every chart of the kitchen with its working: each recipe plain, then with its flavours. */
import { bakesOfRecipes, type ChartContent, chartInputs } from './chart-inputs.ts';
import { chartMixes } from './chart-mixes.ts';
import { tinChartView } from './tin-chart.ts';
import type { TinChartView } from './tin-chart.types.ts';
import { workingView } from './working.ts';
import type { WorkingView } from './working.types.ts';

export interface ChartViews {
  chart: TinChartView;
  working: WorkingView;
}

/** Charts of all recipes as they are written and in every flavour made for them. */
export function chartViews(content: ChartContent, bakes = bakesOfRecipes(content)): ChartViews[] {
  return chartInputs(content, bakes).map((input) => {
    const mixes = chartMixes(input);
    return { chart: tinChartView(input, mixes), working: workingView(input, mixes) };
  });
}
