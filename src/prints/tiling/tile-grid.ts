/**
 * How is a large sheet shared out over home paper? Windows on the sheet, row by row, each overlapping its neighbours
 * by the lap; upright or lengthwise, whichever takes fewer, upright when even. The last ones may reach beyond the sheet.
 */
import type { SheetSize } from '../sheet/paper.ts';
import type { Box } from '../sheet/surface.ts';

/** Where neighbours show the same, and are glued. */
export const LAP_MM = 12;
/** Most home printers reach this far. */
export const MARGIN_MM = 8;
/** Below the window: name, map and how to join. */
export const FOOT_MM = 12;

export interface Tile {
  /** 'B2': second row, second column. */
  name: string;
  column: number;
  row: number;
  /** On the sheet. */
  window: Box;
}

export interface TileGrid {
  paper: SheetSize;
  columns: number;
  rows: number;
  tiles: Tile[];
}

const needed = (lengthMm: number, windowMm: number): number =>
  Math.max(1, Math.ceil((lengthMm - LAP_MM - 1e-6) / (windowMm - LAP_MM)));

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

function gridOn(sheet: SheetSize, paper: SheetSize): TileGrid {
  const widthMm = paper.widthMm - 2 * MARGIN_MM;
  const heightMm = paper.heightMm - 2 * MARGIN_MM - FOOT_MM;
  const columns = needed(sheet.widthMm, widthMm);
  const rows = needed(sheet.heightMm, heightMm);
  const tiles = Array.from({ length: columns * rows }, (_, index): Tile => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const [xMm, yMm] = [column * (widthMm - LAP_MM), row * (heightMm - LAP_MM)];
    return {
      name: `${LETTERS[row] ?? row}${column + 1}`,
      column,
      row,
      window: { xMm, yMm, widthMm, heightMm },
    };
  });
  return { paper, columns, rows, tiles };
}

/** The windows of a sheet on a paper, given upright. */
export function tileGrid(sheet: SheetSize, upright: SheetSize): TileGrid {
  const lengthwise = { widthMm: upright.heightMm, heightMm: upright.widthMm };
  const [one, other] = [gridOn(sheet, upright), gridOn(sheet, lengthwise)];
  return other.tiles.length < one.tiles.length ? other : one;
}
