import { eggLadderCsv, eggLadderJson } from '../../data/egg-ladder-data.ts';
import { tinChartCsv } from '../../data/tin-chart-csv.ts';
import { tinChartJson } from '../../data/tin-chart-json.ts';
import type { TinChartView } from '../../views/tin-chart.types.ts';
import type { MadeFile } from './made-file.ts';

/** The data files: a pair for each tin chart, and a pair for each egg ladder. */
export function dataFiles(charts: readonly { chart: TinChartView }[]): MadeFile[] {
  return charts.flatMap(({ chart }) => [
    { path: `tin-charts/${chart.id}.csv`, bytes: tinChartCsv(chart) },
    { path: `tin-charts/${chart.id}.json`, bytes: tinChartJson(chart) },
    ...ladderFiles(chart),
  ]);
}

function ladderFiles(chart: TinChartView): MadeFile[] {
  if (chart.ladder === null) return [];
  return [
    { path: `egg-ladders/${chart.id}.csv`, bytes: eggLadderCsv(chart, chart.ladder) },
    { path: `egg-ladders/${chart.id}.json`, bytes: eggLadderJson(chart, chart.ladder) },
  ];
}
