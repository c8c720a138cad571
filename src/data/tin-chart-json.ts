import type { TinChartView } from '../views/tin-chart.types.ts';
import { canonicalJson } from './canonical-json.ts';
import { tinChartData } from './tin-chart-data.ts';

/** The JSON file of a tin chart: every figure of the chart, and how it is shown. */
export function tinChartJson(view: TinChartView): string {
  return canonicalJson(tinChartData(view));
}
