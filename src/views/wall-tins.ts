/** What does each tin hold? Drawn to one scale, with its volume and its batter of the kitchen's main recipe. */
import type { Content } from '../domain/content.ts';
import type { WallWords } from '../wording/wall/index.ts';
import { workingPath } from './nav.ts';
import type { TinChartRow, TinChartView } from './tin-chart.types.ts';
import type { WallTin, WallView } from './wall.types.ts';

const oneTin = (row: TinChartRow): boolean => row.count === 1;

function wallTin(row: TinChartRow): WallTin {
  return {
    id: row.tinId,
    name: row.tinName,
    sizeText: row.sizeText,
    picture: row.picture,
    volume: row.volume,
    batter: row.batterEach,
  };
}

/**
 * The recipe that a kitchen bakes in everything: most tins, then most bakes in the log, then first in the list.
 * Null without charts.
 */
export function mainChart(charts: readonly TinChartView[], bakeLog: Content['bakeLog']): TinChartView | null {
  const tins = (chart: TinChartView) => chart.rows.filter(oneTin).length;
  const bakes = (chart: TinChartView) =>
    bakeLog.filter(({ recipeId }) => recipeId === chart.recipe.id).length;
  const isBetter = (one: TinChartView, than: TinChartView) =>
    tins(one) === tins(than) ? bakes(one) > bakes(than) : tins(one) > tins(than);
  return charts.reduce<TinChartView | null>(
    (best, chart) => (best === null || isBetter(chart, best) ? chart : best),
    null,
  );
}

/** Smallest first. */
export function wallTins(chart: TinChartView, words: WallWords): WallView {
  const own = words.tins;
  const tins = chart.rows.filter(oneTin).map(wallTin);
  return {
    id: 'tin-volumes',
    title: own.title,
    lead: own.lead(chart.title),
    kitchenName: chart.kitchenName,
    edition: chart.edition,
    body: {
      form: 'plate',
      volumeUnit: own.volumeUnit,
      batterUnit: own.batterUnit,
      tins: tins.sort((a, b) => a.volume.value - b.volume.value || (a.id < b.id ? -1 : 1)),
    },
    notes: [own.note],
    cautions: [],
    path: workingPath(chart.id),
    pathText: words.working,
  };
}
