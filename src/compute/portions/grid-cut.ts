/**
 * Cutting in rows: a grid of pieces laid over the plan, both ways round, shifted to where it yields most.
 * Counted are whole pieces and pieces of at least 75 %; offcuts are the baker's. Shifts are tried in
 * sixteenths of a piece. Our own definition; the idea is common practice, no source.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import { flattenOutline, outlineBounds, ringDepths } from '../outline/index.ts';
import { bandAreas, type FineRows, polygonArea, strip } from './cell-area.ts';

const SHIFTS = 16;
const FLATTEN_MM = 0.05;
/** A piece short of whole by less than this is whole: flattening, not cake. */
const WHOLE = 0.999;
const GOOD_PIECE = 0.75;

export interface GridPiece {
  xMm: number;
  yMm: number;
  share: number;
}

export interface GridCut {
  pieceWidthMm: number;
  pieceHeightMm: number;
  /** Where a line of the grid lies, from the centre. */
  shiftXMm: number;
  shiftYMm: number;
  whole: number;
  /** Whole ones and those of at least 75 %. */
  good: number;
  /** Lower left corner and share of every piece counted in `good`. */
  pieces: GridPiece[];
}

type Box = ReturnType<typeof outlineBounds>;

interface Ring {
  points: Point[];
  isHole: boolean;
}

function columnShares(rings: Ring[], from: number, width: number, ys: number[], height: number): number[] {
  const strips = rings.map(({ points, isHole }) => ({
    isHole,
    points: strip(points, 'x', from, from + width),
  }));
  return ys.map((y) => {
    const area = strips.reduce((sum, { points, isHole }) => {
      const inside = polygonArea(strip(points, 'y', y, y + height));
      return sum + (isHole ? -inside : inside);
    }, 0);
    return area / (width * height);
  });
}

function starts(min: number, max: number, shift: number, size: number): number[] {
  const first = Math.floor((min - shift) / size);
  const last = Math.ceil((max - shift) / size);
  return Array.from({ length: last - first }, (_, index) => shift + (first + index) * size);
}

function laid(rings: Ring[], box: Box, size: [number, number], shift: [number, number]): GridCut {
  const [width, height] = size;
  const ys = starts(box.minY, box.maxY, shift[1], height);
  const pieces = starts(box.minX, box.maxX, shift[0], width).flatMap((x) =>
    columnShares(rings, x, width, ys, height).map((share, row) => ({
      xMm: x,
      yMm: ys[row] ?? 0,
      share: quantiseRatio(Math.min(1, share)),
    })),
  );
  const good = pieces.filter(({ share }) => share >= GOOD_PIECE);
  return {
    pieceWidthMm: width,
    pieceHeightMm: height,
    shiftXMm: shift[0],
    shiftYMm: shift[1],
    whole: good.filter(({ share }) => share >= WHOLE).length,
    good: good.length,
    pieces: good,
  };
}

/** Rings of an outline ready for cutting. */
function prepared(outline: Outline): Ring[] {
  const depths = ringDepths(outline);
  return flattenOutline(outline, FLATTEN_MM).map((points, index) => ({
    points,
    isHole: (depths[index] ?? 0) % 2 === 1,
  }));
}

/** One laying of the grid: pieces `widthMm` × `heightMm`, a grid line at the shift from the centre. */
export function gridCutAt(
  outline: Outline,
  widthMm: number,
  heightMm: number,
  shiftXMm: number,
  shiftYMm: number,
): GridCut {
  return laid(prepared(outline), outlineBounds(outline), [widthMm, heightMm], [shiftXMm, shiftYMm]);
}

/** Of every ring of one column: its area below each sixteenth of a piece's height, holes negative. */
interface ColumnFill {
  /** Index of the lowest sixteenth: y = first × height ÷ 16. */
  first: number;
  below: number[];
}

function columnFill(rings: Ring[], from: number, width: number, rows: FineRows): ColumnFill {
  const bands = new Array<number>(rows.count).fill(0);
  for (const { points, isHole } of rings) {
    const column = bandAreas(strip(points, 'x', from, from + width), rows);
    for (const [row, area] of column.entries()) bands[row] = (bands[row] ?? 0) + (isHole ? -area : area);
  }
  let sum = 0;
  const below = bands.map((area) => {
    const before = sum;
    sum += area;
    return before;
  });
  return { first: rows.first, below };
}

interface Count {
  good: number;
  whole: number;
}

/** Pieces of one column when a line of the grid lies `shift` sixteenths up. */
function countIn({ below }: ColumnFill, rows: FineRows, shift: number, pieceMm2: number): Count {
  const count = { good: 0, whole: 0 };
  for (let low = 0; low + SHIFTS < rows.count; low += 1) {
    if ((((rows.first + low - shift) % SHIFTS) + SHIFTS) % SHIFTS !== 0) continue;
    const share = quantiseRatio(Math.min(1, ((below[low + SHIFTS] ?? 0) - (below[low] ?? 0)) / pieceMm2));
    if (share >= GOOD_PIECE) count.good += 1;
    if (share >= WHOLE) count.whole += 1;
  }
  return count;
}

/** Counts for all sixteen shifts up, a line of the grid across lying at `shiftX`. */
function countsAcross(rings: Ring[], box: Box, size: [number, number], shiftX: number): Count[] {
  const [width, height] = size;
  const stepMm = height / SHIFTS;
  const first = Math.floor(box.minY / stepMm) - SHIFTS;
  const rows = { first, count: Math.ceil(box.maxY / stepMm) + SHIFTS - first + 1, stepMm };
  const columns = starts(box.minX, box.maxX, shiftX, width).map((x) => columnFill(rings, x, width, rows));
  return Array.from({ length: SHIFTS }, (_, shift) => {
    const counts = columns.map((column) => countIn(column, rows, shift, width * height));
    return {
      good: counts.reduce((sum, { good }) => sum + good, 0),
      whole: counts.reduce((sum, { whole }) => sum + whole, 0),
    };
  });
}

const better = (a: Count, b: Count): boolean => a.good > b.good || (a.good === b.good && a.whole > b.whole);

/**
 * The best laying of pieces `shortMm` × `longMm` over an outline: most good pieces, then most whole ones. Every
 * column is measured once for each of its sixteen places, up to every sixteenth of its height; only the best
 * laying is then cut out piece by piece.
 * @returns counts and the pieces themselves, for the cutting guide
 */
export function bestGridCut(outline: Outline, shortMm: number, longMm: number): GridCut {
  const rings = prepared(outline);
  const box = outlineBounds(outline);
  const ways: [number, number][] =
    shortMm === longMm
      ? [[shortMm, longMm]]
      : [
          [shortMm, longMm],
          [longMm, shortMm],
        ];
  let best: { count: Count; size: [number, number]; shift: [number, number] } | null = null;
  for (const size of ways) {
    for (let i = 0; i < SHIFTS; i += 1) {
      const shiftX = (i * size[0]) / SHIFTS;
      for (const [j, count] of countsAcross(rings, box, size, shiftX).entries()) {
        if (best !== null && !better(count, best.count)) continue;
        best = { count, size, shift: [shiftX, (j * size[1]) / SHIFTS] };
      }
    }
  }
  return best === null
    ? laid(rings, box, [shortMm, longMm], [0, 0])
    : laid(rings, box, best.size, best.shift);
}
