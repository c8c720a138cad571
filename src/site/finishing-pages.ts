/**
 * The finishing chart as pages: one by use (between, around, over, brushed on, and what stands under and around
 * the cake), and one for each finish with what to weigh for every tin.
 */
import type { DownloadLink } from '../views/downloads.ts';
import type {
  FinishingCell,
  FinishingChartView,
  FinishingColumn,
  FinishSummary,
} from '../views/finishing-chart.types.ts';
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

const USES: { id: string; title: string; about: string; uses: readonly FinishingColumn['use'][] }[] = [
  {
    id: 'between',
    title: 'Between the layers',
    about: 'Grams to make for all joints together, inside the dam; in small type what ends up in the cake.',
    uses: ['filling'],
  },
  {
    id: 'dams',
    title: 'The dam',
    about: 'Grams to make for the bead piped round every joint.',
    uses: ['dam'],
  },
  {
    id: 'around',
    title: 'Around and on top',
    about: 'Grams to make for both coats; in small type what ends up on the cake.',
    uses: ['coating'],
  },
  {
    id: 'over',
    title: 'Rolled over',
    about: 'Grams to roll out, the size to roll to, and what to buy.',
    uses: ['rolled'],
  },
  {
    id: 'brushed',
    title: 'Brushed on',
    about: 'Grams to make for every layer, brushed on one face.',
    uses: ['brushed'],
  },
];

function shown(cell: FinishingCell | null | undefined): Row['cells'][number] {
  if (!cell) return { main: '–', small: [] };
  if (cell.sheet !== null) {
    const buy = cell.buy === null ? [] : [`buy ${cell.buy.text}`];
    return { main: cell.make.text, small: [cell.sheet.text, ...buy] };
  }
  return { main: cell.make.text, small: [cell.needed.text] };
}

function rowsOf(
  view: FinishingChartView,
  cellsOf: (row: FinishingChartView['rows'][number]) => Row['cells'],
): Row[] {
  return view.rows.map((row) => ({
    tinName: row.tinName,
    tinPath: tinPath(row.id),
    sizeText: row.sizeText,
    cells: cellsOf(row),
  }));
}

function useTable(view: FinishingChartView, { id, title, about, uses }: (typeof USES)[number]): UseTable[] {
  const places = view.columns.flatMap((column, at) => (uses.includes(column.use) ? [{ column, at }] : []));
  if (places.length === 0) return [];
  const columns = places.map(({ column }) => ({
    name: column.finish.name,
    small: column.useText,
    path: finishPath(column.finish.id),
  }));
  return [
    { id, title, about, columns, rows: rowsOf(view, (row) => places.map(({ at }) => shown(row.cells[at]))) },
  ];
}

function aroundTable(view: FinishingChartView): UseTable {
  const names = ['Coated cake', 'Board', 'Box', 'Ribbon', 'Paper strip for the tin'];
  return {
    id: 'under',
    title: 'Board, box, ribbon and paper',
    about: 'For the cake once it is coated. Paper is the strip that lines the tin’s side.',
    columns: names.map((name) => ({ name, small: '', path: null })),
    rows: rowsOf(view, (row) => [
      { main: `${row.coatedAcross.text} across`, small: [`${row.coatedHeight.text} high`] },
      { main: row.board.text, small: [] },
      { main: row.boxSide.text, small: [`${row.boxHeight.text} high`] },
      { main: row.ribbon.text, small: [] },
      { main: row.paperStrip?.text ?? '–', small: [] },
    ]),
  };
}

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
    tables: [...USES.flatMap((use) => useTable(view, use)), aroundTable(view)],
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
  return {
    id: column.use,
    title: column.useText,
    about: 'Grams, to the step of the scale, with what stays in the bowl counted in.',
    columns: [
      { name: 'Make', small: 'on the cake', path: null },
      ...column.parts.map(({ name }) => ({ name, small: '', path: null })),
    ],
    rows: rowsOf(view, (row) => {
      const cell = row.cells[at];
      const parts = cell?.parts.map(({ figure, spoons }) => ({
        main: figure.text,
        small: spoons === null ? [] : [spoons],
      }));
      return [shown(cell), ...(parts ?? column.parts.map(() => ({ main: '–', small: [] })))];
    }),
  };
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
