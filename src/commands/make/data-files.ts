import { eggLadderCsv, eggLadderJson } from '../../data/egg-ladder-data.ts';
import { finishingChartCsv, finishingChartJson } from '../../data/finishing-chart-files.ts';
import { tinChartCsv } from '../../data/tin-chart-csv.ts';
import { tinChartJson } from '../../data/tin-chart-json.ts';
import type { FinishingChartView } from '../../views/finishing-chart.types.ts';
import type { TinChartView } from '../../views/tin-chart.types.ts';
import type { MadeFile } from './made-file.ts';

/** The data files: a pair for each tin chart, for each egg ladder and for each finishing chart. */
export function dataFiles(
  charts: readonly { chart: TinChartView }[],
  finishing: readonly FinishingChartView[],
): MadeFile[] {
  return [...charts.flatMap(({ chart }) => chartFiles(chart)), ...finishing.flatMap(finishingFiles)];
}

function chartFiles(chart: TinChartView): MadeFile[] {
  return [
    { path: `tin-charts/${chart.id}.csv`, bytes: tinChartCsv(chart) },
    { path: `tin-charts/${chart.id}.json`, bytes: tinChartJson(chart) },
    ...ladderFiles(chart),
  ];
}

function finishingFiles(view: FinishingChartView): MadeFile[] {
  return [
    { path: `finishing/${view.id}.csv`, bytes: finishingChartCsv(view) },
    { path: `finishing/${view.id}.json`, bytes: finishingChartJson(view) },
  ];
}

function ladderFiles(chart: TinChartView): MadeFile[] {
  if (chart.ladder === null) return [];
  return [
    { path: `egg-ladders/${chart.id}.csv`, bytes: eggLadderCsv(chart, chart.ladder) },
    { path: `egg-ladders/${chart.id}.json`, bytes: eggLadderJson(chart, chart.ladder) },
  ];
}
