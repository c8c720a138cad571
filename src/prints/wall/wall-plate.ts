/** Tins drawn to one scale, a drawing with its name, batter and volume to each, in as many columns as fit. */
import type { WallPlate, WallTin } from '../../views/wall.types.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import type { Drawing } from '../sheet/table/types.ts';
import { drawText, type SetText, setText } from '../sheet/text-block.ts';
import { commonScale, tinDrawing } from '../sheet/tin-drawing.ts';
import type { WallType } from './wall-type.ts';

const FIELD_MM = { widthMm: 28, heightMm: 36 };
const DRAWING_GAP_MM = 4;
const COLUMN_GAP_MM = 7;
const ROW_GAP_MM = 3.5;
const WORDS_MM = 51;

/** 1 : n for all tins of a plate. */
export function plateScale({ tins }: WallPlate, growth: number): number {
  const field = { widthMm: FIELD_MM.widthMm * growth, heightMm: FIELD_MM.heightMm * growth };
  return commonScale(
    tins.map(({ picture }) => picture),
    field,
    'below',
  );
}

interface PlateCell {
  tin: WallTin;
  drawing: Drawing | null;
  name: SetText;
  figures: SetText;
  heightMm: number;
}

function plateCell(
  tin: WallTin,
  plate: WallPlate,
  type: WallType,
  wordsMm: number,
  scale: number,
  context: SheetContext,
): PlateCell {
  const drawing = tinDrawing(tin.picture, scale, 'below', context);
  const name = setText([paragraph(tin.name, type.strong)], wordsMm, context);
  const batter = paragraph(`${tin.batter.text}\u00a0${plate.batterUnit}`, type.key);
  const volume = paragraph(`${tin.volume.text}\u00a0${plate.volumeUnit}`, type.unit);
  const figures = setText([batter, volume], wordsMm, context);
  return {
    tin,
    drawing,
    name,
    figures,
    heightMm: Math.max(drawing?.heightMm ?? 0, name.heightMm + figures.heightMm),
  };
}

function drawCell(
  surface: Surface,
  context: SheetContext,
  cell: PlateCell,
  fieldMm: number,
  xMm: number,
  yMm: number,
) {
  const { drawing, name, figures, tin } = cell;
  surface.within('L', { key: 'tins' }, () =>
    surface.within('LI', { key: tin.id }, () =>
      surface.within('LBody', {}, () => {
        if (drawing) {
          const x = xMm + (fieldMm - drawing.widthMm) / 2;
          const box = { xMm: x, yMm, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
          surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, x, yMm));
        }
        const words = xMm + fieldMm + DRAWING_GAP_MM;
        surface.within('P', {}, () => drawText(surface, context, name, words, yMm));
        surface.within('P', {}, () => drawText(surface, context, figures, words, yMm + name.heightMm));
      }),
    ),
  );
}

/** One strip for each row of tins. */
export const wallPlate =
  (plate: WallPlate, type: WallType, growth: number): Block =>
  (widthMm, context) => {
    const scale = plateScale(plate, growth);
    const fieldMm = Math.max(...plate.tins.map(({ picture }) => picture.widthMm / scale), 1);
    const leastMm = fieldMm + DRAWING_GAP_MM + WORDS_MM * growth;
    const columns = Math.max(1, Math.floor((widthMm + COLUMN_GAP_MM) / (leastMm + COLUMN_GAP_MM)));
    const columnMm = (widthMm - (columns - 1) * COLUMN_GAP_MM) / columns;
    const wordsMm = columnMm - fieldMm - DRAWING_GAP_MM;
    const cells = plate.tins.map((tin) => plateCell(tin, plate, type, wordsMm, scale, context));
    const rows = Math.ceil(cells.length / columns);
    return Array.from({ length: rows }, (_, row): Strip => {
      const here = cells.slice(row * columns, (row + 1) * columns);
      return {
        heightMm: Math.max(...here.map(({ heightMm }) => heightMm)),
        spaceMm: ROW_GAP_MM,
        keepWithNext: false,
        draw(surface, xMm, yMm) {
          for (const [column, cell] of here.entries())
            drawCell(surface, context, cell, fieldMm, xMm + column * (columnMm + COLUMN_GAP_MM), yMm);
        },
      };
    });
  };
