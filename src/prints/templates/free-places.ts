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
  for (const line of lines) {
    for (const { x, y } of [line.from, ...spotsAlong(line, CELL_MM / 2)]) {
      const column = Math.floor((x - window.minX) / CELL_MM);
      const row = Math.floor((y - window.minY) / CELL_MM);
      if (column >= 0 && column < columns && row >= 0 && row < rows)
        sums[(row + 1) * (columns + 1) + column + 1] = 1;
    }
  }
  for (let row = 1; row <= rows; row += 1) {
    let inRow = 0;
    for (let column = 1; column <= columns; column += 1) {
      const here = row * (columns + 1) + column;
      inRow += sums[here] ?? 0;
      sums[here] = inRow + (sums[here - columns - 1] ?? 0);
    }
  }
  return { columns, rows, sums };
}

const bounded = (value: number, most: number): number => Math.min(most, Math.max(0, value));

function sumAt({ columns, sums }: Cells, column: number, row: number): number {
  return sums[row * (columns + 1) + column] ?? 0;
}

const cellOf = (mm: number, most: number): number => bounded(Math.floor(mm / CELL_MM), most);

// Neither closures nor new objects here: this is asked many thousands of times for every sheet.
function isFree(cells: Cells, xMm: number, yMm: number, { widthMm, heightMm, clearMm }: Wish): boolean {
  const { columns, rows } = cells;
  const left = cellOf(xMm - clearMm, columns);
  const right = bounded(cellOf(xMm + widthMm + clearMm, columns) + 1, columns);
  const top = cellOf(yMm - clearMm, rows);
  const bottom = bounded(cellOf(yMm + heightMm + clearMm, rows) + 1, rows);
  const above = sumAt(cells, right, top) - sumAt(cells, left, top);
  return sumAt(cells, right, bottom) - sumAt(cells, left, bottom) - above === 0;
}

const apart = (a: WordBox, b: WordBox): boolean =>
  a.xMm + a.widthMm + TEXT_GAP_MM <= b.xMm ||
  b.xMm + b.widthMm + TEXT_GAP_MM <= a.xMm ||
  a.yMm + a.heightMm + TEXT_GAP_MM <= b.yMm ||
  b.yMm + b.heightMm + TEXT_GAP_MM <= a.yMm;

/** The nth step away from the ideal: 0, 1, −1, 2, −2, … so that the search can stop once it is too far. */
const stepAway = (n: number): number => (n % 2 === 1 ? (n + 1) / 2 : -n / 2) * STEP_MM;

function isApart(box: WordBox, taken: readonly WordBox[]): boolean {
  for (const other of taken) if (!apart(box, other)) return false;
  return true;
}

function nearestFree(cells: Cells, window: Window, taken: readonly WordBox[], wish: Wish): WordBox | null {
  const { widthMm, heightMm, near, dislikeMm, farthestMm = Number.POSITIVE_INFINITY } = wish;
  let best: WordBox | null = null;
  let bestMm = farthestMm;
  const { minX, minY, maxX, maxY } = window;
  const ideal = { x: near.x - widthMm / 2, y: near.y - heightMm / 2 };
  const mostSteps = (2 * Math.max(maxX - minX, maxY - minY)) / STEP_MM;
  for (let row = 0; row <= mostSteps; row += 1) {
    const down = stepAway(row);
    if (Math.abs(down) >= bestMm) break;
    const yMm = ideal.y + down;
    if (yMm < minY || yMm + heightMm > maxY) continue;
    for (let column = 0; column <= mostSteps; column += 1) {
      const across = stepAway(column);
      // Steps are multiples of 1½ mm: the root is exact where the sum is, on every engine.
      const away = Math.sqrt(across * across + down * down);
      if (away >= bestMm) break;
      const xMm = ideal.x + across;
      if (xMm < minX || xMm + widthMm > maxX) continue;
      if (!isFree(cells, xMm - minX, yMm - minY, wish)) continue;
      const box = { xMm, yMm, widthMm, heightMm };
      if (!isApart(box, taken)) continue;
      const score = away + (dislikeMm?.({ x: xMm + widthMm / 2, y: yMm + heightMm / 2 }) ?? 0);
      if (score >= bestMm) continue;
      best = box;
      bestMm = score;
    }
  }
  return best;
}

export function freePlaces(lines: readonly Curve[], window: Window): FreePlaces {
  const cells = cellsOf(lines, window);
  const taken: WordBox[] = [];
  return {
    take(wish) {
      const box = nearestFree(cells, window, taken, wish);
      if (box !== null) taken.push(box);
      return box;
    },
  };
}
