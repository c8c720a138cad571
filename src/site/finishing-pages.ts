/**
 * The finishing chart as pages: one by use (between, around, over, brushed on, and what stands under and around
 * the cake), and one for each finish with what to weigh for every tin.
 */
import type { DownloadLink } from '../views/downloads.ts';
import type { FinishingChartView, FinishingColumn, FinishSummary } from '../views/finishing-chart.types.ts';
import {
  type FinishingTable,
  finishingCell,
  finishingRows,
  finishingTables,
} from '../views/finishing-tables.ts';
import { finishPath, type PageHead, pageHead, tinPath } from '../views/nav.ts';
import { markdownHtml } from './markdown.ts';

interface Row {
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
  methodHtml: string;
  tables: UseTable[];
}

/** The same table with links to the pages of its tins and finishes. */
const linked = (table: FinishingTable): UseTable => ({
  ...table,
  columns: table.columns.map(({ name, small, finishId }) => ({
    name,
    small,
    path: finishId === null ? null : finishPath(finishId),
  })),
  rows: table.rows.map(({ tinId, ...row }) => ({ ...row, tinPath: tinPath(tinId) })),
});

/** The page of the whole chart. */
export function finishingPage(view: FinishingChartView, files: readonly DownloadLink[]): FinishingPage {
  return {
    head: pageHead({
      path: 'finishing.html',
      text: view.title,
      description: view.summary,
      section: 'finishing',
    }),
    view,
    tables: finishingTables(view).map(linked),
    finishes: view.finishes.map(({ id, name, partsText, keepsText }) => ({
      name,
      path: finishPath(id),
      partsText,
      keepsText,
    })),
    files,
  };
}

function partsTable(view: FinishingChartView, column: FinishingColumn, at: number): UseTable {
  return linked({
    id: column.use,
    title: column.useText,
    about: 'Grams, to the step of the scale, with what stays in the bowl counted in.',
    columns: [
      { name: 'Make', small: 'on the cake', finishId: null },
      ...column.parts.map(({ name }) => ({ name, small: '', finishId: null })),
    ],
    rows: finishingRows(view, (row) => {
      const cell = row.cells[at];
      const parts = cell?.parts.map(({ figure, spoons }) => ({
        main: figure.text,
        small: spoons === null ? [] : [spoons],
      }));
      return [finishingCell(cell), ...(parts ?? column.parts.map(() => ({ main: '–', small: [] })))];
    }),
  });
}

/** The page of one finish. */
export function finishPage(finish: FinishSummary, view: FinishingChartView): FinishPage {
  return {
    head: pageHead({
      path: finishPath(finish.id),
      text: finish.name,
      description: `${finish.name}: what to weigh for every tin.`,
      section: 'finishing',
    }),
    finish,
    methodHtml: markdownHtml(finish.methodMarkdown, 1),
    tables: view.columns.flatMap((column, at) =>
      column.finish.id === finish.id ? [partsTable(view, column, at)] : [],
    ),
  };
}
