/** Labels side by side in rows, edge to edge with fine lines between: one cut parts two. */
import type { LabelSize } from '../../domain/label-settings.ts';
import { lineWeightPt, rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import type { LabelFace } from './label-face.ts';

export const columnsIn = (frameMm: number, { widthMm }: LabelSize): number =>
  Math.floor((frameMm + 1e-6) / widthMm);

function rowStrip(faces: readonly LabelFace[], size: LabelSize, key: string, context: SheetContext): Strip {
  return {
    heightMm: size.heightMm,
    spaceMm: 0,
    keepWithNext: false,
    draw(surface, xMm, yMm) {
      for (const [column, face] of faces.entries()) {
        const left = xMm + column * size.widthMm;
        surface.artifact(() =>
          surface.path(rectangle(left, yMm, size.widthMm, size.heightMm), {
            stroke: context.inks.rule,
            lineWidthPt: lineWeightPt.outline,
          }),
        );
        surface.within('Sect', { key: `${key} ${column}` }, () => face.draw(surface, left, yMm));
      }
    },
  };
}

/** Rows of labels of one size; `size` must fit the frame. */
export const labelRows =
  (faces: readonly LabelFace[], size: LabelSize): Block =>
  (widthMm, context) => {
    const columns = columnsIn(widthMm, size);
    const rows = Math.ceil(faces.length / columns);
    return Array.from({ length: rows }, (_, row): Strip => {
      const strip = rowStrip(faces.slice(row * columns, (row + 1) * columns), size, `label ${row}`, context);
      return row === 0 ? { ...strip, spaceMm: 4 } : strip;
    });
  };
