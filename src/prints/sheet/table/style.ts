/** Step three: text set in its cells, first baselines of a row in one line, rows as high as their tallest cell. */
import type { SheetContext } from '../sheet-context.ts';
import { baselineInLeadingMm, type SetText, setText } from '../text-block.ts';
import { MM_PER_PT } from '../units.ts';
import { DRAWING_GAP_MM } from './size.ts';
import type { Cell, Row, SizedColumn } from './types.ts';

export interface StyledCell {
  cell: Cell;
  column: SizedColumn;
  text: SetText;
  /** Where the text begins, right of a drawing. */
  textXMm: number;
  /** From the row's top. */
  numberBaselineMm: number;
  textTopMm: number;
}

export interface StyledRow {
  row: Row;
  cells: StyledCell[];
  heightMm: number;
}

const firstBaseline = (cell: Cell, text: SetText, context: SheetContext): number =>
  cell.number ? baselineInLeadingMm(cell.number.type, context) : text.firstBaselineMm;

function setCell(cell: Cell, column: SizedColumn, context: SheetContext) {
  const drawing = column.drawingMm === undefined ? 0 : column.drawingMm + DRAWING_GAP_MM;
  const text = setText(cell.paragraphs ?? [], column.widthMm - drawing, context);
  return { cell, column, text, textXMm: column.xMm + drawing, baseline: firstBaseline(cell, text, context) };
}

export function styledRow(
  row: Row,
  columns: SizedColumn[],
  paddingMm: number,
  context: SheetContext,
): StyledRow {
  const set = columns.map((column, index) => setCell(row.cells[index] ?? {}, column, context));
  const common = Math.max(0, ...set.map((cell) => cell.baseline));
  let bottom = 0;
  const cells = set.map(({ cell, column, text, textXMm, baseline }) => {
    const top = paddingMm + common - baseline;
    const numberHeight = cell.number ? cell.number.type.leadingPt * MM_PER_PT : 0;
    bottom = Math.max(bottom, top + numberHeight + text.heightMm, paddingMm + (cell.drawing?.heightMm ?? 0));
    return {
      cell,
      column,
      text,
      textXMm,
      numberBaselineMm: paddingMm + common,
      textTopMm: top + numberHeight,
    };
  });
  return { row, cells, heightMm: bottom + paddingMm };
}
