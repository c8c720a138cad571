/** The finishing chart as tables, one by use: between, around, over, brushed on, and what stands under it. */
import type { FinishingTableWords } from '../wording/finishing/tables.ts';
import type {
  FinishingCell,
  FinishingChartView,
  FinishingColumn,
  FinishingRow,
} from './finishing-chart.types.ts';

export interface FinishingTableCell {
  main: string;
  small: string[];
}

export interface FinishingTableRow {
  tinId: string;
  tinName: string;
  sizeText: string;
  cells: FinishingTableCell[];
}

export interface FinishingTable {
  id: string;
  title: string;
  about: string;
  /** `finishId` is null for a column that is not one finish. */
  columns: { name: string; small: string; finishId: string | null }[];
  rows: FinishingTableRow[];
}

interface Use {
  id: 'between' | 'dams' | 'around' | 'over';
  uses: readonly FinishingColumn['use'][];
}

const USES: readonly Use[] = [
  { id: 'between', uses: ['filling'] },
  { id: 'dams', uses: ['dam', 'brushed'] },
  { id: 'around', uses: ['coating'] },
  { id: 'over', uses: ['rolled'] },
];

/** What one cell shows: the weight to make, and in small type what is on the cake or how far to roll. */
export function finishingCell(
  cell: FinishingCell | null | undefined,
  words: FinishingTableWords,
): FinishingTableCell {
  if (!cell) return { main: '–', small: [] };
  if (cell.sheet !== null) {
    const buy = cell.buy === null ? [] : [words.buy(cell.buy.text)];
    return { main: cell.make.text, small: [[cell.sheet.text, ...buy].join(', ')] };
  }
  return { main: cell.make.text, small: [cell.needed.text] };
}

/** A row for every tin of the chart. */
export function finishingRows(
  view: FinishingChartView,
  cellsOf: (row: FinishingRow) => FinishingTableCell[],
): FinishingTableRow[] {
  return view.rows.map((row) => ({
    tinId: row.id,
    tinName: row.tinName,
    sizeText: row.sizeText,
    cells: cellsOf(row),
  }));
}

function useTable(view: FinishingChartView, { id, uses }: Use, words: FinishingTableWords): FinishingTable[] {
  const places = view.columns.flatMap((column, at) => (uses.includes(column.use) ? [{ column, at }] : []));
  if (places.length === 0) return [];
  const columns = places.map(({ column }) => ({
    name: column.finish.name,
    small: column.useText,
    finishId: column.finish.id,
  }));
  const rows = finishingRows(view, (row) => places.map(({ at }) => finishingCell(row.cells[at], words)));
  const { title, about } = words[id];
  return [{ id, title, about, columns, rows }];
}

function aroundTable(view: FinishingChartView, words: FinishingTableWords): FinishingTable {
  const { title, about, columns } = words.under;
  const names = [columns.coated, columns.board, columns.box, columns.ribbon, columns.paper];
  return {
    id: 'under',
    title,
    about,
    columns: names.map((name) => ({ name, small: '', finishId: null })),
    rows: finishingRows(view, (row) => [
      { main: words.across(row.coatedAcross.text), small: [words.high(row.coatedHeight.text)] },
      { main: row.board.text, small: [] },
      { main: row.boxSide.text, small: [words.high(row.boxHeight.text)] },
      { main: row.ribbon.text, small: [] },
      { main: row.paperStrip?.text ?? '–', small: [] },
    ]),
  };
}

/** All tables of the chart, in the order of work. */
export function finishingTables(view: FinishingChartView, words: FinishingTableWords): FinishingTable[] {
  return [...USES.flatMap((use) => useTable(view, use, words)), aroundTable(view, words)];
}
