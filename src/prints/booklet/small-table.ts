/** The booklet's tables: rows of one line, figures on their digits, cut into parts where they are too wide. */
import type { BookletTable, TableCell, TableColumn } from '../../views/booklet/booklet.types.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { tableFits } from '../sheet/table/table.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import { bookletType } from './booklet-type.ts';

export const ROW_PADDING_MM = 0.12;

export function headingOf(name: string, unit: string): Paragraph[] {
  const { columnHead, columnUnit } = bookletType;
  return [paragraph(name, columnHead), ...(unit === '' ? [] : [paragraph(unit, columnUnit)])];
}

const TONES: Record<TableCell['tone'], TypeStyle> = {
  plain: bookletType.rowWord,
  strong: bookletType.rowName,
  unknown: { ...bookletType.rowName, colour: 'caution' },
};

function cellOf(cell: TableCell, { weight }: TableColumn, isFirst: boolean): Cell {
  // A mark of ¼ is a whole name on the dial: it stands under the others, not right of their last digit.
  const isNumber = weight === 'key' && cell.figure?.unit !== 'gas';
  if (isNumber) return { number: { text: cell.text, type: bookletType.figure }, heading: isFirst };
  const type = isFirst
    ? { ...bookletType.rowName, ...(cell.tone === 'unknown' ? TONES.unknown : {}) }
    : TONES[cell.tone];
  const small = cell.small === '' ? [] : [paragraph(cell.small, bookletType.columnUnit)];
  return { paragraphs: [paragraph(cell.text, type), ...small], heading: isFirst };
}

function columnOf({ name, unit, weight }: TableColumn, isFirst: boolean): Column {
  return {
    heading: headingOf(name, unit),
    align: weight === 'key' ? 'right' : 'left',
    ...(isFirst && weight === 'word' ? { narrowestMm: 26 } : {}),
  };
}

/** Some columns of a table; the first names the row. */
function part({ id, columns, rows, anchors }: BookletTable, from: number, to: number): TableSpec {
  const [first] = columns;
  const shown = [
    ...(first && from > 0 ? [{ column: first, at: 0 }] : []),
    ...columns.slice(from, to).map((column, index) => ({ column, at: from + index })),
  ];
  return {
    key: `${id} ${from}`,
    zebra: true,
    paddingMm: ROW_PADDING_MM,
    columns: shown.map(({ column, at }) => columnOf(column, at === 0)),
    rows: rows.map((row) => {
      const anchor = anchors[row.id];
      return {
        ...(anchor === undefined || from > 0 ? {} : { anchor }),
        cells: shown.map(({ column, at }) => {
          const cell = row.cells[at];
          return cell ? cellOf(cell, column, at === 0) : {};
        }),
      };
    }),
  };
}

const NAMES_MM = 42;
/** The widest gap that a table puts between columns. */
const GAP_MM = 10;
/** Wider than this, figures and their row drift apart. */
const MOST_FIGURE_MM = 26;

/** Figures alone spread over the page; beside names they share the width that names leave. */
function spread(spec: TableSpec, widthMm: number): TableSpec {
  const isNamed = spec.columns[0]?.narrowestMm !== undefined;
  const count = spec.columns.length - (isNamed ? 1 : 0);
  const roomMm = (widthMm - (isNamed ? NAMES_MM : 0)) / Math.max(1, count) - GAP_MM;
  const narrowestMm = Math.max(0, Math.min(MOST_FIGURE_MM, roomMm));
  const columns = spec.columns.map((column) =>
    column.narrowestMm === undefined && column.align === 'right' ? { ...column, narrowestMm } : column,
  );
  return { ...spec, columns };
}

/** As many columns as fit at a time; the parts as even as they come. Throws when not even one column fits. */
export function smallTables(view: BookletTable, widthMm: number, context: SheetContext): TableSpec[] {
  const figures = view.columns.length - 1;
  for (let parts = 1; parts <= figures; parts += 1) {
    const each = Math.ceil(figures / parts);
    const cut = Array.from({ length: Math.ceil(figures / each) }, (_, index) => {
      const from = index * each;
      return part(view, from === 0 ? 0 : from + 1, Math.min(view.columns.length, from + each + 1));
    });
    if (cut.every((spec) => tableFits(spec, widthMm, context))) {
      const roomy = cut.map((spec) => spread(spec, widthMm));
      return roomy.every((spec) => tableFits(spec, widthMm, context)) ? roomy : cut;
    }
  }
  throw new Error(`table '${view.id}' does not fit the booklet`);
}
