/** The finishing chart as tables, one by use: between, around, over, brushed on, and what stands under it. */
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
  id: string;
  title: string;
  about: string;
  uses: readonly FinishingColumn['use'][];
}

const USES: readonly Use[] = [
  {
    id: 'between',
    title: 'Between the layers',
    about: 'Grams to make for all joints together, inside the dam; in small type what ends up in the cake.',
    uses: ['filling'],
  },
  {
    id: 'dams',
    title: 'The dam, and syrup',
    about: 'Grams to make for the bead piped round every joint, and for syrup on one face of every layer.',
    uses: ['dam', 'brushed'],
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
];

/** What one cell shows: the weight to make, and in small type what is on the cake or how far to roll. */
export function finishingCell(cell: FinishingCell | null | undefined): FinishingTableCell {
  if (!cell) return { main: '–', small: [] };
  if (cell.sheet !== null) {
    const buy = cell.buy === null ? [] : [`buy ${cell.buy.text}`];
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

function useTable(view: FinishingChartView, { id, title, about, uses }: Use): FinishingTable[] {
  const places = view.columns.flatMap((column, at) => (uses.includes(column.use) ? [{ column, at }] : []));
  if (places.length === 0) return [];
  const columns = places.map(({ column }) => ({
    name: column.finish.name,
    small: column.useText,
    finishId: column.finish.id,
  }));
  const rows = finishingRows(view, (row) => places.map(({ at }) => finishingCell(row.cells[at])));
  return [{ id, title, about, columns, rows }];
}

function aroundTable(view: FinishingChartView): FinishingTable {
  const names = ['Coated cake', 'Board', 'Box', 'Ribbon', 'Paper strip for the tin'];
  return {
    id: 'under',
    title: 'Board, box, ribbon and paper',
    about: 'For the cake once it is coated. Paper is the strip that lines the tin’s side.',
    columns: names.map((name) => ({ name, small: '', finishId: null })),
    rows: finishingRows(view, (row) => [
      { main: `${row.coatedAcross.text} across`, small: [`${row.coatedHeight.text} high`] },
      { main: row.board.text, small: [] },
      { main: row.boxSide.text, small: [`${row.boxHeight.text} high`] },
      { main: row.ribbon.text, small: [] },
      { main: row.paperStrip?.text ?? '–', small: [] },
    ]),
  };
}

/** All tables of the chart, in the order of work. */
export function finishingTables(view: FinishingChartView): FinishingTable[] {
  return [...USES.flatMap((use) => useTable(view, use)), aroundTable(view)];
}
