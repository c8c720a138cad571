/** One tin chart and its working as pages: the view's own figures, laid out so that templates only write them. */

import { chartName } from '../views/chart-name.ts';
import type { ChartViews } from '../views/chart-views.ts';
import type { DownloadLink } from '../views/downloads.ts';
import { chartPath, type PageHead, pageHead, recipePath, tinPath, workingPath } from '../views/nav.ts';
import type {
  Amount,
  ChartColumn,
  EggFigures,
  LadderRung,
  TinChartRow,
  TinChartView,
} from '../views/tin-chart.types.ts';
import type { WorkingStep, WorkingView } from '../views/working.types.ts';
import { writtenSteps } from '../views/written-steps.ts';
import { eggsInWords } from '../wording/eggs.ts';
import { leftOver } from '../wording/left-over.ts';
import { type SiteWords, siteWordsFor } from '../wording/site/index.ts';
import type { Words } from '../wording/words.ts';
import { type BakeTable, bakeTable } from './bake-table.ts';
import { lazyPage } from './lazy-page.ts';
import { rowDrawing } from './tin-drawing.ts';
import { writeDown } from './written-view.ts';

interface LabelledAmount {
  label: string;
  value: number;
  text: string;
  spoons: string | null;
}

export interface ChartPage extends ChartPageNow, ChartPageRest {}

/** What lists of charts and other pages tell of it. */
interface ChartPageNow {
  head: PageHead;
  name: string;
  title: string;
  summary: string;
  factsText: string;
  print: DownloadLink | null;
  files: DownloadLink[];
}

/** What it alone shows, which grows with the tins. */
interface ChartPageRest {
  chart: TinChartView;
  hasEggs: boolean;
  recipePath: string;
  workingPath: string;
  bake: BakeTable | null;
  rows: unknown[];
  rungs: unknown[];
}

const REST = [
  ...(['chart', 'hasEggs', 'recipePath', 'workingPath', 'bake', 'rows', 'rungs'] as const),
] as const satisfies readonly (keyof ChartPageRest)[];

/** Widest thumbnail in a row, px. */
const THUMBNAIL_PX = 68;
/** More columns than this do not fit a page: the rows become blocks. */
const MOST_COLUMNS = 8;

function labelled(amounts: readonly Amount[], columns: readonly ChartColumn[]): LabelledAmount[] {
  return amounts.map(({ figure, spoons }, index) => {
    return { label: columns[index]?.name ?? '', value: figure.value, text: figure.text, spoons };
  });
}

/** What the bare count leaves out: yolks, whites or beaten egg; '' when it is so many whole eggs. */
function wordsBesideCount(eggs: EggFigures, words: Words): string {
  const plain = eggsInWords([{ part: 'egg', whole: eggs.whole.value }], words);
  return eggs.text === plain ? '' : eggs.text;
}

function chartRow(row: TinChartRow, order: number, chart: TinChartView, shown: RowSetting): unknown {
  const { words, say, pxPerMm } = shown;
  return {
    id: row.id,
    order,
    drawing: rowDrawing(row.picture, pxPerMm),
    tinPath: tinPath(row.tinId),
    tinName: row.tinName,
    countText: row.count > 1 ? `× ${row.count}` : '',
    sizeText: row.sizeText,
    warnings: row.warnings,
    eggValue: row.eggs?.whole.value ?? 0,
    eggText: row.eggs?.whole.text ?? '',
    eggWords: row.eggs ? wordsBesideCount(row.eggs, words) : '',
    eggExactText: row.eggs ? say.exact(row.eggs.exact.text) : '',
    batterValue: row.batter.value,
    batterText: row.batter.text,
    pourText: say.poured(row.receives.text, row.count > 1),
    amounts: labelled(row.amounts, chart.columns),
    fillValue: row.rawFillShare.value,
    fillText: `${row.rawFill.text} ${words.units.height}`,
    fillShareText: row.rawFillShare.text,
    surplusValue: row.surplus.value,
    surplusText: row.surplusText,
    workingPath: `${workingPath(chart.id)}#${row.id}`,
  };
}

function ladderRung(rung: LadderRung, columns: readonly ChartColumn[], say: SiteWords['chart']): unknown {
  return {
    eggText: rung.eggText,
    batterText: rung.batter.text,
    amounts: labelled(rung.amounts, columns),
    fills: rung.fills.map(({ text, left }) => `${text}, ${leftOver(left, say)}`),
  };
}

interface RowSetting {
  words: Words;
  say: SiteWords['chart'];
  pxPerMm: number;
}

/** The page of a chart; `files` are its prints and data, prints first. The chart is asked for again when it is read. */
export function chartPage(
  chartNow: () => TinChartView,
  files: readonly DownloadLink[],
  words: Words,
): ChartPage {
  const chart = chartNow();
  const { chart: say } = siteWordsFor(words.locale);
  const print = files.find((file) => file.text.startsWith('PDF')) ?? null;
  const now: ChartPageNow = {
    head: {
      ...pageHead({
        path: chartPath(chart.id),
        text: say.title(chart.title),
        description: chart.summary,
        section: 'charts',
        sorts: true,
        blocks: chart.columns.length > MOST_COLUMNS ? 'all' : 'screen and (max-width: 62rem)',
      }),
    },
    name: chartName(chart),
    title: chart.title,
    summary: chart.summary,
    factsText: `${chart.finishedHeightText}. ${chart.eggSizeText}.`,
    print,
    files: files.filter((file) => file !== print),
  };
  return lazyPage(now, REST, () => chartPageRest(chartNow(), words));
}

function chartPageRest(chart: TinChartView, words: Words): ChartPageRest {
  const widestMm = Math.max(1, ...chart.rows.map((row) => row.picture.widthMm));
  const { chart: say } = siteWordsFor(words.locale);
  return {
    chart,
    hasEggs: chart.rows.some((row) => row.eggs !== null),
    recipePath: recipePath(chart.recipe.id),
    workingPath: workingPath(chart.id),
    bake: bakeTable(chart, words.locale),
    rows: chart.rows.map((row, index) =>
      chartRow(row, index, chart, { words, say, pxPerMm: THUMBNAIL_PX / widestMm }),
    ),
    rungs: chart.ladder?.rungs.map((rung) => ladderRung(rung, chart.ladder?.columns ?? [], say)) ?? [],
  };
}

export interface WorkingPage {
  head: PageHead;
  title: string;
  chartPath: string;
  shared: WorkingStep[];
  rows: { anchor: string; title: string; steps: WorkingStep[] }[];
}

type Steps = Pick<WorkingPage, 'shared' | 'rows'>;

/** Squares and cubes as they are written by hand. */
export const stepsOf = ({ shared, rows }: WorkingView): Steps => ({
  shared: writtenSteps(shared),
  rows: rows.map((row) => ({ ...row, steps: writtenSteps(row.steps) })),
});

/** The one working that is held: that of the page which was asked for it last. */
let last: { views: ChartViews; steps: Steps } | null = null;

function lastSteps(views: ChartViews, page: WorkingPage): Steps {
  if (last?.views === views) return last.steps;
  last = null;
  const steps = stepsOf(views.working());
  last = { views, steps };
  // Whoever reads it first, what it says is asked for too: as long as it is there.
  writeDown(page);
  return steps;
}

const made = new WeakMap<ChartViews, { words: SiteWords; page: WorkingPage }>();

/**
 * The page that shows how every figure of a chart came about: by far the longest, so its steps are worked out when
 * they are read, one chart's at a time. What was remembered of a chart gives the same page again.
 */
export function workingPage(views: ChartViews, words: SiteWords): WorkingPage {
  const before = made.get(views);
  if (before?.words === words) return before.page;
  const page = freshWorkingPage(views, words);
  made.set(views, { words, page });
  return page;
}

function freshWorkingPage(views: ChartViews, words: SiteWords): WorkingPage {
  const { chart, workingTitle: title } = views;
  const page: WorkingPage = {
    head: pageHead({
      path: workingPath(chart.id),
      text: title,
      description: words.working.description(chart.recipe.name),
      section: 'charts',
      below: [{ path: chartPath(chart.id), text: words.chart.title(chart.title) }],
    }),
    title,
    chartPath: chartPath(chart.id),
    get shared() {
      return lastSteps(views, page).shared;
    },
    get rows() {
      return lastSteps(views, page).rows;
    },
  };
  return page;
}
