/** Step one: every row has a cell for every column, numbers are split where they align. */
import type { Cell, Row, TableSpec } from './types.ts';

/** Digits (with thousands spaces and sign) up to the decimal point; what follows hangs to the right. */
const beforePoint = /^[−–+-]?[\d\u00a0\u2009\u202f ,]*\d/;

/** '12.5' → ['12', '.5'], '2¾' → ['2', '¾'], '–' → ['–', '']; '¾' hangs wholly to the right. */
export function alignedParts(text: string): [string, string] {
  const whole = beforePoint.exec(text)?.[0];
  if (whole !== undefined) return [whole, text.slice(whole.length)];
  return /^[¼-¾⅐-⅞]/.test(text) ? ['', text] : [text, ''];
}

const blank: Cell = {};

export function normalised(table: TableSpec): Row[] {
  return table.rows.map((row) => ({
    ...row,
    cells: table.columns.map((_, index) => row.cells[index] ?? blank),
  }));
}
