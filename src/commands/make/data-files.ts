import { calendarFile } from '../../data/calendar-file.ts';
import { eggLadderCsv, eggLadderJson } from '../../data/egg-ladder-data.ts';
import { finishingChartCsv, finishingChartJson } from '../../data/finishing-chart-files.ts';
import { labelCsv, labelJson } from '../../data/label-data.ts';
import { orderCsv, orderJson, weekCsv, weekJson } from '../../data/order-data.ts';
import { portionsCsv, portionsJson, stacksCsv } from '../../data/portions-data.ts';
import { timetableCsv } from '../../data/timetable-csv.ts';
import { tinChartCsv } from '../../data/tin-chart-csv.ts';
import { tinChartJson } from '../../data/tin-chart-json.ts';
import { viewJson } from '../../data/view-json.ts';
import type { FinishingChartView } from '../../views/finishing-chart.types.ts';
import type { LabelOutcome } from '../../views/label.types.ts';
import type { LabelFolder } from '../../views/label-orders.ts';
import type { OrdersView } from '../../views/orders.ts';
import type { PortionsView } from '../../views/portions.types.ts';
import type { TinChartView } from '../../views/tin-chart.types.ts';
import type { MadeFile } from './made-file.ts';

/** The data files, each made when it is asked for: a pair for each tin chart, egg ladder and finishing chart. */
export function* dataFiles(
  charts: readonly { chart: TinChartView }[],
  finishing: readonly FinishingChartView[],
  portions: PortionsView,
  labels: readonly LabelFolder[] = [],
  orders: OrdersView = { orders: [], weeks: [], timetables: [] },
): Generator<MadeFile> {
  yield* orderFiles(orders);
  for (const { folder, labels: all } of labels) for (const label of all) yield* labelFiles(label, folder);
  yield* portionFiles(portions);
  for (const { chart } of charts) yield* chartFiles(chart);
  for (const view of finishing) yield* finishingFiles(view);
}

function* orderFiles({ orders, weeks, timetables }: OrdersView): Generator<MadeFile> {
  for (const order of orders) {
    yield { path: `orders/${order.id}.csv`, bytes: orderCsv(order) };
    yield { path: `orders/${order.id}.json`, bytes: orderJson(order) };
  }
  for (const week of weeks) {
    yield { path: `weeks/${week.id.toLowerCase()}.csv`, bytes: weekCsv(week) };
    yield { path: `weeks/${week.id.toLowerCase()}.json`, bytes: weekJson(week) };
  }
  for (const timetable of timetables) yield* timetableFiles(timetable);
}

function timetableFiles({ orderId, view }: OrdersView['timetables'][number]): MadeFile[] {
  const path = `${orderId === null ? 'weeks' : 'orders'}/${view.id}`;
  return [
    { path: `${path}.ics`, bytes: calendarFile(view) },
    { path: `${path}-timetable.csv`, bytes: timetableCsv(view) },
    { path: `${path}-timetable.json`, bytes: viewJson(view) },
  ];
}

function portionFiles(view: PortionsView): MadeFile[] {
  if (view.rows.length === 0) return [];
  return [
    { path: 'portions/portions.csv', bytes: portionsCsv(view) },
    { path: 'portions/portions.json', bytes: portionsJson(view) },
    ...(view.stacks.length === 0 ? [] : [{ path: 'portions/stacks.csv', bytes: stacksCsv(view) }]),
  ];
}

function chartFiles(chart: TinChartView): MadeFile[] {
  return [
    { path: `tin-charts/${chart.id}.csv`, bytes: tinChartCsv(chart) },
    { path: `tin-charts/${chart.id}.json`, bytes: tinChartJson(chart) },
    ...ladderFiles(chart),
  ];
}

/** A label that was refused has no data either: its page says why. */
function labelFiles({ id, view }: LabelOutcome, folder: string): MadeFile[] {
  if (view === null) return [];
  return [
    { path: `${folder}/${id}.csv`, bytes: labelCsv(view) },
    { path: `${folder}/${id}.json`, bytes: labelJson(view) },
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
