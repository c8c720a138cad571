/** Fillings and coatings of the booklet: the finishing chart's amounts for the tins and finishes it holds. */
import type { Content } from '../../domain/content.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import type { Figure } from '../figure.ts';
import type { FinishingChartView, FinishingColumn, FinishingRow } from '../finishing-chart.types.ts';
import { methodPieces } from '../method-text.ts';
import { finishAnchor, tableRowAnchor } from './anchors.ts';
import type { BookletFinishing, BookletTable, TableCell, TableColumn } from './booklet.types.ts';
import { figureCell, wordCell } from './cells.ts';

type UseId = 'between' | 'dams' | 'around' | 'over';

const USES: readonly { id: UseId; uses: readonly FinishingColumn['use'][] }[] = [
  { id: 'between', uses: ['filling'] },
  { id: 'dams', uses: ['dam', 'brushed'] },
  { id: 'around', uses: ['coating'] },
  { id: 'over', uses: ['rolled'] },
];

const NONE = '–';
const word = (id: string, name: string, unit = ''): TableColumn => ({ id, name, unit, weight: 'word' });

interface Place {
  column: FinishingColumn;
  at: number;
}

/** A number stays with its unit. */
const unbroken = (text: string): string => text.replaceAll(/(\d) (mm|cm|in|g)\b/g, '$1\u00a0$2');

/** '8 mm' of 'Filling, 8 mm': the table says the use. */
const detailOf = ({ useText }: FinishingColumn): string => unbroken(useText.slice(useText.indexOf(', ') + 2));

function columnsOf({ column }: Place, words: BookletWords): TableColumn[] {
  const { finish, use } = column;
  const make: TableColumn = { id: column.id, name: finish.name, unit: detailOf(column), weight: 'key' };
  return use === 'rolled' ? [make, word(`${column.id}-sheet`, words.finishing.rollTo)] : [make];
}

function cellsOf({ column, at }: Place, row: FinishingRow): TableCell[] {
  const cell = row.cells[at];
  const make = cell ? figureCell(cell.make) : wordCell(NONE);
  return column.use === 'rolled' ? [make, wordCell(unbroken(cell?.sheet?.text ?? NONE))] : [make];
}

function anchorsOf(id: string, rows: readonly FinishingRow[]): Record<string, string> {
  return Object.fromEntries(rows.map((row) => [row.id, tableRowAnchor(id, row.id)]));
}

function useTable(
  view: FinishingChartView,
  rows: readonly FinishingRow[],
  finishIds: ReadonlySet<string>,
  { id, uses }: (typeof USES)[number],
  words: BookletWords,
): BookletTable[] {
  const places = view.columns.flatMap((column, at): Place[] =>
    uses.includes(column.use) && finishIds.has(column.finish.id) ? [{ column, at }] : [],
  );
  if (places.length === 0 || rows.length === 0) return [];
  const { title, about } = words.finishing.uses[id];
  const body = {
    columns: [word('tin', words.finishing.tin), ...places.flatMap((place) => columnsOf(place, words))],
    rows: rows.map((row) => ({
      id: row.id,
      cells: [wordCell(row.tinName), ...places.flatMap((place) => cellsOf(place, row))],
    })),
  };
  return [{ id, title, lead: about, ...body, anchors: anchorsOf(id, rows), notes: [], cautions: [] }];
}

/** The first of the tables that holds the finish. */
const firstUse = (finishId: string, { columns }: FinishingChartView): string | null =>
  USES.find(({ uses }) => columns.some(({ finish, use }) => finish.id === finishId && uses.includes(use)))
    ?.id ?? null;

/** A box is as wide as its board: said once, unless this kitchen has it otherwise. */
const hasOwnBox = (rows: readonly FinishingRow[]): boolean =>
  rows.some(({ board, boxSide }) => board.text !== boxSide.text);

function underTable(rows: readonly FinishingRow[], words: BookletWords): BookletTable[] {
  if (rows.length === 0) return [];
  const { uses, under, tin } = words.finishing;
  const told: (readonly [string, string, (row: FinishingRow) => Figure])[] = [
    ['coated', under.coated, (row) => row.coatedAcross],
    ['high', under.high, (row) => row.coatedHeight],
    ['board', under.board, (row) => row.board],
    ...(hasOwnBox(rows) ? [['box', under.boxSide, (row: FinishingRow) => row.boxSide] as const] : []),
    ['box-high', under.boxHeight, (row) => row.boxHeight],
    ['ribbon', under.ribbon, (row) => row.ribbon],
  ];
  const body = {
    columns: [word('tin', tin), ...told.map(([id, name]) => word(id, name))],
    rows: rows.map((row) => ({
      id: row.id,
      cells: [
        wordCell(row.tinName),
        ...told.map(([, , figure]) => ({
          figure: figure(row),
          text: figure(row).text.replaceAll(' ', '\u00a0'),
          small: '',
          tone: 'plain' as const,
        })),
      ],
    })),
  };
  const { title, about } = uses.under;
  return [
    { id: 'under', title, lead: about, ...body, anchors: anchorsOf('under', rows), notes: [], cautions: [] },
  ];
}

/** Null while there is nothing to finish with. `view` may know more tins and finishes than the content asks for. */
export function bookletFinishing(
  view: FinishingChartView | undefined,
  { kitchen, finishes }: Content,
  words: BookletWords,
): BookletFinishing | null {
  if (view === undefined || finishes.length === 0) return null;
  const tinIds = new Set(kitchen.tins.map(({ id }) => id));
  const finishIds = new Set(finishes.map(({ id }) => id));
  const rows = view.rows.filter(({ id }) => tinIds.has(id));
  return {
    summary: view.summary,
    settings: view.settings,
    tables: [
      ...USES.flatMap((use) => useTable(view, rows, finishIds, use, words)),
      ...underTable(rows, words),
    ],
    finishes: view.finishes
      .filter(({ id }) => finishIds.has(id))
      .map(({ id, name, partsText, keepsText, methodMarkdown, cautions }) => ({
        id,
        name,
        anchor: finishAnchor(id),
        tableId: firstUse(id, view),
        partsText,
        keepsText,
        method: methodPieces(methodMarkdown),
        cautions,
      })),
    notes: view.notes,
    leftOut: view.leftOut.filter(({ id }) => tinIds.has(id)).map(({ text }) => text),
    cautions: view.cautions,
    warnings: view.warnings.map(({ message }) => message),
  };
}
