/** A wall table in the house's table: key figures aligned on their digits, words beside them. */
import type { WallCell, WallColumn, WallTable } from '../../views/wall.types.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { WallType } from './wall-type.ts';

const SPREAD = 0.9;
const NAMED_SHARE = 0.55;
/** Between columns, and at the edges of a shaded row. */
const GAPS_MM = 6.5;
/** Between a key figure and the words behind it: about one digit, so that two numbers never read as one. */
const APART_EM = 0.55;
const MANY_WORDS = 4;

function columnOf({ name, unit, weight }: WallColumn, type: WallType, narrowestMm: number): Column {
  const heading = [paragraph(name, type.head), ...(unit === '' ? [] : [paragraph(unit, type.unit)])];
  return { heading, align: weight === 'key' ? 'right' : 'left', narrowestMm };
}

/** Where many columns hold a word each, each word stands clear of the next. */
function wordColumnMm(
  { columns, rows }: WallTable,
  index: number,
  type: WallType,
  { metrics }: SheetContext,
) {
  const words = columns.filter(({ weight }) => weight === 'word').length;
  if (index === 0 || index === columns.length - 1 || words < MANY_WORDS) return 0;
  const { font, sizePt } = type.strong;
  const longest = [
    columns[index]?.name ?? '',
    ...rows.flatMap(({ cells }) => cells[index]?.text.split(' ') ?? []),
  ];
  const wide = Math.max(...longest.map((word) => metrics.widthMm(word, font, sizePt)));
  return wide + metrics.widthMm('n', font, sizePt);
}

function keyWidthMm({ columns, rows }: WallTable, index: number, type: WallType, { metrics }: SheetContext) {
  const { font, sizePt } = type.key;
  const isFirst = index === 0;
  const widths = rows.map(({ cells }) => metrics.widthMm(cells[index]?.text ?? '', font, sizePt, true));
  const apart =
    isFirst || columns[index]?.weight !== 'key' ? 0 : metrics.widthMm('0', font, sizePt, true) * 2 * APART_EM;
  return Math.max(0, ...widths) + apart;
}

/** Figures alone spread over the sheet; beside names they leave these on one line where they can. */
function keyColumnMm(
  table: WallTable,
  index: number,
  type: WallType,
  widthMm: number,
  context: SheetContext,
): number {
  const { columns, rows } = table;
  const keys = columns.filter(({ weight }) => weight === 'key').length;
  if (keys === columns.length) return (widthMm / keys) * SPREAD;
  const hasWordsBehind = columns.at(-1)?.weight === 'word';
  if (hasWordsBehind || rows.length === 0) return keyWidthMm(table, index, type, context);
  const { font, sizePt } = type.strong;
  const names = rows.map(({ cells }) => context.metrics.widthMm(cells[0]?.text ?? '', font, sizePt));
  const besideNames = widthMm - Math.max(...names) - GAPS_MM * (keys + 1);
  return Math.min(widthMm * NAMED_SHARE, Math.max(0, besideNames)) / keys;
}

function toneOf({ tone }: WallCell, type: WallType, isFirst: boolean): TypeStyle {
  const plain = isFirst ? type.strong : type.word;
  return { plain, contains: type.strong, unknown: type.unknown, nothing: type.quiet }[tone];
}

function cellOf(cell: WallCell, { weight }: WallColumn, type: WallType, isFirst: boolean): Cell {
  // A mark of ¼ is a whole name on the dial: it stands under the others, not right of their last digit.
  if (cell.figure?.unit === 'gas') return { paragraphs: [paragraph(cell.text, type.key)], heading: isFirst };
  if (weight === 'key') return { number: { text: cell.text, type: type.key }, heading: isFirst };
  return { paragraphs: [paragraph(cell.text, toneOf(cell, type, isFirst))], heading: isFirst };
}

/** The first column speaks for its row. */
export function wallTableSpec(
  body: WallTable,
  type: WallType,
  paddingMm: number,
  widthMm: number,
  context: SheetContext,
): TableSpec {
  return {
    key: 'wall',
    columns: body.columns.map((column, index) =>
      columnOf(
        column,
        type,
        column.weight === 'key'
          ? keyColumnMm(body, index, type, widthMm, context)
          : wordColumnMm(body, index, type, context),
      ),
    ),
    rows: body.rows.map(({ id, cells }) => ({
      anchor: id,
      cells: cells.flatMap((cell, index) => {
        const column = body.columns[index];
        return column ? [cellOf(cell, column, type, index === 0)] : [];
      }),
    })),
    zebra: true,
    paddingMm,
  };
}
