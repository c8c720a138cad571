/** Tins drawn to one scale, a drawing with its name, batter and volume to each, in as many columns as fit. */
import type { WallPlate, WallTin } from '../../views/wall.types.ts';
import { narrowestMm, type Paragraph, paragraph, unbrokenMm } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import type { Drawing } from '../sheet/table/types.ts';
import { drawText, type SetText, setText } from '../sheet/text-block.ts';
import { commonScale, type DrawingLook, tinDrawing } from '../sheet/tin-drawing.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { WallType } from './wall-type.ts';

const FIELD_MM = { widthMm: 28, heightMm: 38 };
const DRAWING_GAP_MM = 4;
const COLUMN_GAP_MM = 5;
/** Seen from two metres, five times as far as a chart in the hand. */
const LOOK: DrawingLook = { weight: 2.5, fill: 'tint' };

/** 1 : n for all tins of a plate, however many sheets they take. */
export function plateScale({ tins }: WallPlate, growth: number): number {
  const field = { widthMm: FIELD_MM.widthMm * growth, heightMm: FIELD_MM.heightMm * growth };
  return commonScale(
    tins.map(({ picture }) => picture),
    field,
    'below',
  );
}

interface TinWords {
  name: Paragraph;
  figures: Paragraph[];
}

/** Its unit hangs below the line, and words stand right under it. */
const loose = (key: TypeStyle): TypeStyle => ({ ...key, leadingPt: key.sizePt });

function tinWords(tin: WallTin, plate: WallPlate, type: WallType): TinWords {
  const batter = paragraph(`${tin.batter.text}\u00a0${plate.batterUnit}`, loose(type.key));
  const volume = paragraph(`${tin.volume.text}\u00a0${plate.volumeUnit}`, type.unit);
  return { name: paragraph(tin.name, type.strong), figures: [batter, volume] };
}

interface Grid {
  scale: number;
  fieldMm: number;
  columns: number;
  columnMm: number;
  wordsMm: number;
}

function gridOf(
  plate: WallPlate,
  type: WallType,
  scale: number,
  widthMm: number,
  { metrics }: SheetContext,
): Grid {
  const fieldMm = Math.max(...plate.tins.map(({ picture }) => picture.widthMm / scale), 1);
  const words = plate.tins.map((tin) => tinWords(tin, plate, type));
  const leastWordsMm = Math.max(
    ...words.flatMap(({ name, figures }) => [
      narrowestMm(name, metrics),
      ...figures.map((text) => unbrokenMm(text, metrics)),
    ]),
  );
  const leastMm = fieldMm + DRAWING_GAP_MM + leastWordsMm;
  const columns = Math.max(1, Math.floor((widthMm + COLUMN_GAP_MM) / (leastMm + COLUMN_GAP_MM)));
  const columnMm = (widthMm - (columns - 1) * COLUMN_GAP_MM) / columns;
  return { scale, fieldMm, columns, columnMm, wordsMm: columnMm - fieldMm - DRAWING_GAP_MM };
}

/** Rows of tins in this width. */
export const plateRows = (
  plate: WallPlate,
  type: WallType,
  scale: number,
  widthMm: number,
  context: SheetContext,
): number => Math.ceil(plate.tins.length / gridOf(plate, type, scale, widthMm, context).columns);

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
  grid: Grid,
  context: SheetContext,
): PlateCell {
  const drawing = tinDrawing(tin.picture, grid.scale, 'below', context, LOOK);
  const words = tinWords(tin, plate, type);
  const name = setText([words.name], grid.wordsMm, context);
  const figures = setText(words.figures, grid.wordsMm, context);
  const heightMm = Math.max(drawing?.heightMm ?? 0, name.heightMm + figures.heightMm);
  return { tin, drawing, name, figures, heightMm };
}

/** Drawing and words each in the middle of the row, side by side. */
function drawCell(
  surface: Surface,
  context: SheetContext,
  { drawing, name, figures, tin }: PlateCell,
  { fieldMm }: Grid,
  place: { xMm: number; yMm: number; heightMm: number },
) {
  const middleMm = (heightMm: number) => place.yMm + (place.heightMm - heightMm) / 2;
  surface.within('L', { key: 'tins' }, () =>
    surface.within('LI', { key: tin.id }, () =>
      surface.within('LBody', {}, () => {
        if (drawing) {
          const xMm = place.xMm + (fieldMm - drawing.widthMm) / 2;
          const yMm = middleMm(drawing.heightMm);
          const box = { xMm, yMm, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
          surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, xMm, yMm));
        }
        const wordsMm = place.xMm + fieldMm + DRAWING_GAP_MM;
        const topMm = middleMm(name.heightMm + figures.heightMm);
        surface.within('P', {}, () => drawText(surface, context, name, wordsMm, topMm));
        surface.within('P', {}, () => drawText(surface, context, figures, wordsMm, topMm + name.heightMm));
      }),
    ),
  );
}

/** One strip for each row of tins, so far apart. */
export const wallPlate =
  (plate: WallPlate, type: WallType, scale: number, apartMm: number): Block =>
  (widthMm, context) => {
    const grid = gridOf(plate, type, scale, widthMm, context);
    const cells = plate.tins.map((tin) => plateCell(tin, plate, type, grid, context));
    const rows = Math.ceil(cells.length / grid.columns);
    return Array.from({ length: rows }, (_, row): Strip => {
      const here = cells.slice(row * grid.columns, (row + 1) * grid.columns);
      const heightMm = Math.max(...here.map((cell) => cell.heightMm));
      return {
        heightMm,
        spaceMm: apartMm,
        keepWithNext: false,
        draw(surface, xMm, yMm) {
          for (const [column, cell] of here.entries()) {
            const left = xMm + column * (grid.columnMm + COLUMN_GAP_MM);
            drawCell(surface, context, cell, grid, { xMm: left, yMm, heightMm });
          }
        },
      };
    });
  };
