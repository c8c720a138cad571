/** Every chart of the kitchen with its working: each recipe plain, then with its flavours. */
import { bakeGuideView } from './bake-guide.ts';
import type { BakeGuideView } from './bake-guide.types.ts';
import { bakesOfRecipes, type ChartContent, chartInputs } from './chart-inputs.ts';
import { chartMixes } from './chart-mixes.ts';
import { tinChartView } from './tin-chart.ts';
import type { TinChartView } from './tin-chart.types.ts';
import { workingView } from './working.ts';
import type { WorkingView } from './working.types.ts';

export interface ChartViews {
  chart: TinChartView;
  working: WorkingView;
  /** How the plain recipe behaves in the oven; null on its flavours' charts, which bake alike. */
  guide: BakeGuideView | null;
}

/** What sheets are drawn from: the working is for the site alone. */
export type PrintedViews = Pick<ChartViews, 'chart' | 'guide'>;

/** Charts of all recipes as they are written and in every flavour made for them. */
export function chartViews(content: ChartContent, bakes = bakesOfRecipes(content)): ChartViews[] {
  return chartInputs(content, bakes).map((input) => {
    const mixes = chartMixes(input);
    const plain = (input.flavours?.named ?? []).length === 0;
    return {
      chart: tinChartView(input, mixes),
      working: workingView(input, mixes),
      guide:
        plain && input.bakes ? bakeGuideView(input.bakes, input.kitchen, content.altitudeM ?? null) : null,
    };
  });
}
