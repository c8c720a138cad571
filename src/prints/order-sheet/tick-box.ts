/** A box to tick with a pencil or a floury finger, drawn so that no font needs the sign. */
import { lineWeightPt, rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Cell, Column, Drawing } from '../sheet/table/types.ts';

const TICK_MM = 4.3;

/** `alt` is read aloud: 'to tick'. */
const tickBox = (alt: string, { inks }: SheetContext): Drawing => ({
  widthMm: TICK_MM,
  heightMm: TICK_MM,
  alt,
  draw: (surface, xMm, yMm) =>
    surface.path(rectangle(xMm, yMm, TICK_MM, TICK_MM), {
      stroke: inks.ink,
      lineWidthPt: lineWeightPt.cut,
    }),
});

/** The narrow column that the boxes stand in. */
export const TICK_COLUMN: Column = {
  heading: [],
  align: 'left',
  drawingMm: TICK_MM,
  narrowestMm: TICK_MM + 1.5,
  widestMm: TICK_MM + 1.5,
};

export const tickCell = (alt: string, context: SheetContext): Cell => ({ drawing: tickBox(alt, context) });
