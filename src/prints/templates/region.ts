/** The paper inside a piece's cut lines, by the even-odd rule: asked where a point lies and what a line crosses. */

import type { PathStep } from '../sheet/surface.ts';
import { type Curve, curvesOf, type Spot, spotsAlong } from './curves.ts';

export interface Region {
  has(spot: Spot): boolean;
  /** Where a line at x = value (or y = value) passes the edge, in order. */
  crossings(along: 'x' | 'y', value: number): number[];
}

const APART_MM = 1;

interface Edge {
  a: Spot;
  b: Spot;
}

function edgesOf(curves: readonly Curve[]): Edge[] {
  return curves.flatMap((curve) => {
    if (curve.straight) return [{ a: curve.from, b: curve.to }];
    const spots = [curve.from, ...spotsAlong(curve, APART_MM)];
    return spots.slice(1).map((b, index) => ({ a: spots[index] ?? b, b }));
  });
}

function crossingsAt(edges: readonly Edge[], along: 'x' | 'y', value: number): number[] {
  const other = along === 'x' ? 'y' : 'x';
  const found: number[] = [];
  for (const { a, b } of edges) {
    if (a[along] > value === b[along] > value) continue;
    found.push(a[other] + ((value - a[along]) / (b[along] - a[along])) * (b[other] - a[other]));
  }
  return found.sort((p, q) => p - q);
}

export function regionOf(steps: readonly PathStep[]): Region {
  const edges = edgesOf(curvesOf(steps));
  return {
    crossings: (along, value) => crossingsAt(edges, along, value),
    has: ({ x, y }) => crossingsAt(edges, 'y', y).filter((edge) => edge > x).length % 2 === 1,
  };
}
