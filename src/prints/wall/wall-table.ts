/** A wall table in the house's table: key figures aligned on their digits, words beside them. */
import type { WallCell, WallColumn, WallTable } from '../../views/wall.types.ts';
import { paragraph } from '../sheet/lines.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import type { WallType } from './wall-type.ts';

const SPREAD = 0.9;
const NAMED_SHARE = 0.55;

function columnOf({ name, unit, weight }: WallColumn, type: WallType, keyMm: number): Column {
  const heading = [paragraph(name, type.head), ...(unit === '' ? [] : [paragraph(unit, type.unit)])];
  return weight === 'key' ? { heading, align: 'right', narrowestMm: keyMm } : { heading, align: 'left' };
}

/** Figures alone spread over the sheet; beside names they keep to two thirds of it. */
function keyColumnMm({ columns, rows }: WallTable, widthMm: number): number {
  const keys = columns.filter(({ weight }) => weight === 'key').length;
  if (keys === columns.length) return (widthMm / keys) * SPREAD;
  const hasWordsBehind = columns.at(-1)?.weight === 'word';
  return hasWordsBehind || rows.length === 0 ? 0 : (widthMm * NAMED_SHARE) / keys;
}

function cellOf(cell: WallCell, { weight }: WallColumn, type: WallType, isFirst: boolean): Cell {
  // A mark of ¼ is a whole name on the dial: it stands under the others, not right of their last digit.
  if (cell.figure?.unit === 'gas') return { paragraphs: [paragraph(cell.text, type.key)], heading: isFirst };
  if (weight === 'key') return { number: { text: cell.text, type: type.key }, heading: isFirst };
  const styles = { plain: isFirst ? type.strong : type.word, contains: type.strong, unknown: type.unknown };
  return { paragraphs: [paragraph(cell.text, styles[cell.tone])], heading: isFirst };
}

const PADDING_MM = 0.8;

/** The first column speaks for its row. */
export function wallTableSpec(body: WallTable, type: WallType, growth: number, widthMm: number): TableSpec {
  const keyMm = keyColumnMm(body, widthMm);
  return {
    key: 'wall',
    columns: body.columns.map((column) => columnOf(column, type, keyMm)),
    rows: body.rows.map(({ id, cells }) => ({
      anchor: id,
      cells: cells.flatMap((cell, index) => {
        const column = body.columns[index];
        return column ? [cellOf(cell, column, type, index === 0)] : [];
      }),
    })),
    zebra: true,
    paddingMm: PADDING_MM * growth,
  };
}
