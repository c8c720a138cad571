/**
 * Cutting in rows: a grid of pieces laid over the plan, both ways round, shifted to where it yields most.
 * Counted are whole pieces and pieces of at least 75 %; offcuts are the baker's. Shifts are tried in
 * sixteenths of a piece. Our own definition; the idea is common practice, no source.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import { flattenOutline, outlineBounds, ringDepths } from '../outline/index.ts';
import { polygonArea, strip } from './cell-area.ts';

const SHIFTS = 16;
const FLATTEN_MM = 0.05;
/** A piece short of whole by less than this is whole: flattening, not cake. */
const WHOLE = 0.999;
export const GOOD_PIECE = 0.75;

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

function laid(
  rings: Ring[],
  box: ReturnType<typeof outlineBounds>,
  size: [number, number],
  shift: [number, number],
): GridCut {
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

const better = (a: GridCut, b: GridCut): boolean =>
  a.good > b.good || (a.good === b.good && a.whole > b.whole);

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

/**
 * The best laying of pieces `shortMm` × `longMm` over an outline: most good pieces, then most whole ones.
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
  let best: GridCut | null = null;
  for (const size of ways) {
    for (let i = 0; i < SHIFTS; i += 1) {
      for (let j = 0; j < SHIFTS; j += 1) {
        const cut = laid(rings, box, size, [(i * size[0]) / SHIFTS, (j * size[1]) / SHIFTS]);
        if (best === null || better(cut, best)) best = cut;
      }
    }
  }
  return best ?? laid(rings, box, [shortMm, longMm], [0, 0]);
}
