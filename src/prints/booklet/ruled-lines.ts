/** Lines to write on. */
import { hairline } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';

export const LINE_MM = 8;

/** Level lines from one line's height below the top; furniture. */
export function drawRuledLines(
  surface: Surface,
  context: SheetContext,
  box: { xMm: number; yMm: number; widthMm: number; heightMm: number },
): void {
  surface.artifact(() => {
    for (let y = LINE_MM; y <= box.heightMm + 1e-6; y += LINE_MM)
      hairline(surface, context, box.xMm, box.yMm + y, box.widthMm);
  });
}
