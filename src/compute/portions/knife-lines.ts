/**
 * Where the knife goes: the lines of a grid as far as they run through the cake, and for rings the circles and
 * the spokes between them. Lengths mm, y up, about the middle of the plan.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { flattenOutline, outlineBounds } from '../outline/index.ts';
import type { GridCut } from './grid-cut.ts';
import type { RingCut } from './ring-cut.ts';

export interface KnifeLine {
  from: Point;
  to: Point;
}

export interface RingLines {
  /** Radii of the circles to cut, the cake's own edge left out. */
  circlesMm: number[];
  spokes: KnifeLine[];
}

const FLATTEN_MM = 0.05;
/** A line nearer to the edge than this cuts nothing off. */
const EDGE_MM = 0.5;

type Axis = 'x' | 'y';

/** Where a line across one axis is inside: pairs of crossings, by the even-odd rule. */
function stretches(rings: readonly Point[][], axis: Axis, at: number): [number, number][] {
  const other: Axis = axis === 'x' ? 'y' : 'x';
  const hits = rings.flatMap((ring) =>
    ring.flatMap((point, index) => {
      const next = ring[(index + 1) % ring.length] ?? point;
      if (point[axis] < at === next[axis] < at) return [];
      const share = (at - point[axis]) / (next[axis] - point[axis]);
      return [point[other] + share * (next[other] - point[other])];
    }),
  );
  hits.sort((a, b) => a - b);
  return Array.from({ length: Math.floor(hits.length / 2) }, (_, pair): [number, number] => [
    hits[2 * pair] ?? 0,
    hits[2 * pair + 1] ?? 0,
  ]).filter(([low, high]) => high - low > EDGE_MM);
}

function linesBetween(min: number, max: number, shift: number, size: number): number[] {
  const first = Math.ceil((min + EDGE_MM - shift) / size);
  const last = Math.floor((max - EDGE_MM - shift) / size);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => shift + (first + index) * size);
}

const spot = (x: number, y: number): Point => ({ x: quantiseMm(x), y: quantiseMm(y) });

/** The lines of a grid through the cake, those across first. */
export function gridLines(outline: Outline, cut: GridCut): KnifeLine[] {
  const rings = flattenOutline(outline, FLATTEN_MM);
  const box = outlineBounds(outline);
  const across = linesBetween(box.minY, box.maxY, cut.shiftYMm, cut.pieceHeightMm).flatMap((y) =>
    stretches(rings, 'y', y).map(([low, high]) => ({ from: spot(low, y), to: spot(high, y) })),
  );
  const down = linesBetween(box.minX, box.maxX, cut.shiftXMm, cut.pieceWidthMm).flatMap((x) =>
    stretches(rings, 'x', x).map(([low, high]) => ({ from: spot(x, low), to: spot(x, high) })),
  );
  return [...across, ...down];
}

/** Circles and spokes of a round cut in rings; the first spoke of every ring points up. */
export function ringLines({ rings }: RingCut): RingLines {
  const spokes = rings.flatMap(({ outerMm, innerMm, slices }) =>
    Array.from({ length: slices }, (_, index): KnifeLine => {
      const angle = Math.PI / 2 - (2 * Math.PI * index) / slices;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      return { from: spot(innerMm * cos, innerMm * sin), to: spot(outerMm * cos, outerMm * sin) };
    }),
  );
  return { circlesMm: rings.map(({ innerMm }) => innerMm).filter((radius) => radius > 0), spokes };
}
