/**
 * The finishing chart as pages: one by use (between, around, over, brushed on, and what stands under and around
 * the cake), and one for each finish with what to weigh for every tin.
 */
import { isPoured } from '../compute/finishes/poured.ts';
import type { DownloadLink } from '../views/downloads.ts';
import type { FinishingChartView, FinishingColumn, FinishSummary } from '../views/finishing-chart.types.ts';
import {
  type FinishingTable,
  finishingCell,
  finishingRows,
  finishingTables,
} from '../views/finishing-tables.ts';
import { finishPath, type PageHead, pageHead, tinPath, workingPath } from '../views/nav.ts';
import type { WorkingView } from '../views/working.types.ts';
import type { FinishingWorkingWords } from '../wording/finishing/index.ts';
import type { FinishingTableWords } from '../wording/finishing/tables.ts';
import type { SiteWords } from '../wording/site/index.ts';
import { stepsOf, type WorkingPage } from './chart-page.ts';
import { markdownHtml } from './markdown.ts';

interface Row {
  /** Where links from the working land; one table of a page has it. */
  anchor: string | null;
  /** Where its figures are worked out, with the words of the link. */
  why: { path: string; text: string; label: string } | null;
  tinName: string;
  tinPath: string;
  sizeText: string;
  cells: { main: string; small: string[] }[];
}

interface UseTable {
  id: string;
  title: string;
  about: string;
  columns: { name: string; small: string; path: string | null }[];
  rows: Row[];
}

export interface FinishingPage {
  head: PageHead;
  view: FinishingChartView;
  tables: UseTable[];
  finishes: { name: string; path: string; partsText: string; keepsText: string }[];
  files: readonly DownloadLink[];
}

export interface FinishPage {
  head: PageHead;
  finish: FinishSummary;
  /** Its card in every size. */
  cards: readonly DownloadLink[];
  methodHtml: string;
  tables: UseTable[];
}

/** The same table with links to the pages of its tins and finishes, and to their working. */
const linked = (
  table: FinishingTable,
  chartId: string,
  words: FinishingWorkingWords,
  isFirst: boolean,
): UseTable => ({
  ...table,
  columns: table.columns.map(({ name, small, finishId }) => ({
    name,
    small,
    path: finishId === null ? null : finishPath(finishId),
  })),
  rows: table.rows.map(({ tinId, ...row }) => ({
    ...row,
    anchor: isFirst ? tinId : null,
    why: {
      path: `${workingPath(chartId)}#${tinId}`,
      text: words.why,
      label: words.whyOf(row.tinName),
    },
    tinPath: tinPath(tinId),
  })),
});

/** The page of the whole chart. */
export function finishingPage(
  view: FinishingChartView,
  files: readonly DownloadLink[],
  words: FinishingWorkingWords,
  tables: FinishingTableWords,
): FinishingPage {
  return {
    head: pageHead({
      path: 'finishing.html',
      text: view.title,
      description: view.summary,
      section: 'finishing',
    }),
    view,
    tables: finishingTables(view, tables).map((table, at) => linked(table, view.id, words, at === 0)),
    finishes: view.finishes.map(({ id, name, partsText, keepsText }) => ({
      name,
      path: finishPath(id),
      partsText,
      keepsText,
    })),
    files,
  };
}

function partsTable(
  view: FinishingChartView,
  column: FinishingColumn,
  at: number,
  summary: FinishSummary,
  words: FinishingWorkingWords,
  { finishing: page }: SiteWords,
  tables: FinishingTableWords,
): UseTable {
  const table: FinishingTable = {
    id: column.use,
    title: column.useText,
    about: page.partsAbout(summary.loss.value === 0 ? null : summary.loss.text, isPoured(summary)),
    columns: [
      { name: page.make, small: page.onTheCake, finishId: null },
      ...column.parts.map(({ name }) => ({ name, small: '', finishId: null })),
    ],
    rows: finishingRows(view, (row) => {
      const cell = row.cells[at];
      const parts = cell?.parts.map(({ figure, spoons }) => ({
        main: figure.text,
        small: spoons === null ? [] : [spoons],
      }));
      return [finishingCell(cell, tables), ...(parts ?? column.parts.map(() => ({ main: '–', small: [] })))];
    }),
  };
  return linked(table, view.id, words, false);
}

/** The page of one finish. */
function finishPage(
  finish: FinishSummary,
  cards: readonly DownloadLink[],
  view: FinishingChartView,
  words: FinishingWorkingWords,
  site: SiteWords,
  tables: FinishingTableWords,
): FinishPage {
  const { finishing: page } = site;
  return {
    head: pageHead({
      path: finishPath(finish.id),
      text: finish.name,
      description: page.description(finish.name),
      section: 'finishing',
    }),
    finish,
    cards,
    methodHtml: markdownHtml(finish.methodMarkdown, 1),
    tables: view.columns.flatMap((column, at) =>
      column.finish.id === finish.id ? [partsTable(view, column, at, finish, words, site, tables)] : [],
    ),
  };
}

/** A page for each finish; `cardsOf` gives the files of its card. */
export const finishPages = (
  view: FinishingChartView,
  cardsOf: (finishId: string) => readonly DownloadLink[],
  words: FinishingWorkingWords,
  site: SiteWords,
  tables: FinishingTableWords,
): FinishPage[] =>
  view.finishes.map((finish) => finishPage(finish, cardsOf(finish.id), view, words, site, tables));

/** The page that shows how every amount of a finishing chart came about. */
export function finishingWorkingPage(
  working: WorkingView,
  view: FinishingChartView,
  words: FinishingWorkingWords,
): WorkingPage {
  return {
    head: pageHead({
      path: workingPath(working.chartId),
      text: working.title,
      description: words.description,
      section: 'finishing',
      below: [{ path: 'finishing.html', text: view.title }],
    }),
    title: working.title,
    chartPath: 'finishing.html',
    ...stepsOf(working),
  };
}
