/**
 * Where on a part is room for words? The part's window in cells of 1 mm, those crossed by lines taken; words go
 * to the free place nearest to where they belong, clear of lines and of one another.
 */
import { type Curve, type Spot, spotsAlong, type Window } from './curves.ts';

export interface WordBox {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

export interface Wish {
  widthMm: number;
  heightMm: number;
  /** Where the middle of the words should be. */
  near: Spot;
  clearMm: number;
  /** Added to the distance, in mm, where a place is less liked. */
  dislikeMm?(middle: Spot): number;
  farthestMm?: number;
}

export interface FreePlaces {
  /** Takes the nearest free place; null when there is none. */
  take(wish: Wish): WordBox | null;
}

const CELL_MM = 1;
const STEP_MM = 1.5;
const TEXT_GAP_MM = 1.2;

interface Cells {
  columns: number;
  rows: number;
  /** Taken cells left of and above a corner of the grid. */
  sums: Int32Array;
}

function cellsOf(lines: readonly Curve[], window: Window): Cells {
  const columns = Math.ceil((window.maxX - window.minX) / CELL_MM) + 1;
  const rows = Math.ceil((window.maxY - window.minY) / CELL_MM) + 1;
  const sums = new Int32Array((columns + 1) * (rows + 1));
  const at = (column: number, row: number) => row * (columns + 1) + column;
  for (const line of lines) {
    for (const { x, y } of [line.from, ...spotsAlong(line, CELL_MM / 2)]) {
      const column = Math.floor((x - window.minX) / CELL_MM);
      const row = Math.floor((y - window.minY) / CELL_MM);
      if (column >= 0 && column < columns && row >= 0 && row < rows) sums[at(column + 1, row + 1)] = 1;
    }
  }
  for (let row = 1; row <= rows; row += 1) {
    for (let column = 1; column <= columns; column += 1) {
      const above = sums[at(column, row - 1)] ?? 0;
      const before = sums[at(column - 1, row)] ?? 0;
      const both = sums[at(column - 1, row - 1)] ?? 0;
      sums[at(column, row)] = (sums[at(column, row)] ?? 0) + above + before - both;
    }
  }
  return { columns, rows, sums };
}

function isFree({ columns, rows, sums }: Cells, box: WordBox, clearMm: number, window: Window): boolean {
  const column = (mm: number) => Math.min(columns, Math.max(0, Math.floor((mm - window.minX) / CELL_MM)));
  const row = (mm: number) => Math.min(rows, Math.max(0, Math.floor((mm - window.minY) / CELL_MM)));
  const left = column(box.xMm - clearMm);
  const right = Math.min(columns, column(box.xMm + box.widthMm + clearMm) + 1);
  const top = row(box.yMm - clearMm);
  const bottom = Math.min(rows, row(box.yMm + box.heightMm + clearMm) + 1);
  const sum = (c: number, r: number) => sums[r * (columns + 1) + c] ?? 0;
  return sum(right, bottom) - sum(left, bottom) - sum(right, top) + sum(left, top) === 0;
}

const apart = (a: WordBox, b: WordBox): boolean =>
  a.xMm + a.widthMm + TEXT_GAP_MM <= b.xMm ||
  b.xMm + b.widthMm + TEXT_GAP_MM <= a.xMm ||
  a.yMm + a.heightMm + TEXT_GAP_MM <= b.yMm ||
  b.yMm + b.heightMm + TEXT_GAP_MM <= a.yMm;

export function freePlaces(lines: readonly Curve[], window: Window): FreePlaces {
  const cells = cellsOf(lines, window);
  const taken: WordBox[] = [];
  return {
    take({ widthMm, heightMm, near, clearMm, dislikeMm, farthestMm = Number.POSITIVE_INFINITY }) {
      let best: WordBox | null = null;
      let bestMm = farthestMm;
      const ideal = { x: near.x - widthMm / 2, y: near.y - heightMm / 2 };
      // Counted from the ideal place, so that words sit exactly there when it is free.
      const first = (ideal: number, edge: number) => ideal - Math.floor((ideal - edge) / STEP_MM) * STEP_MM;
      for (let y = first(ideal.y, window.minY); y + heightMm <= window.maxY; y += STEP_MM) {
        for (let x = first(ideal.x, window.minX); x + widthMm <= window.maxX; x += STEP_MM) {
          const away = Math.hypot(x - ideal.x, y - ideal.y);
          if (away >= bestMm) continue;
          const box = { xMm: x, yMm: y, widthMm, heightMm };
          if (!isFree(cells, box, clearMm, window) || !taken.every((other) => apart(box, other))) continue;
          const score = away + (dislikeMm?.({ x: x + widthMm / 2, y: y + heightMm / 2 }) ?? 0);
          if (score >= bestMm) continue;
          best = box;
          bestMm = score;
        }
      }
      if (best !== null) taken.push(best);
      return best;
    },
  };
}
