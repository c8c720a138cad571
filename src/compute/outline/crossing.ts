/**
 * Do the walls cross? A real tin's never do; a drawing's may, and then nesting gives a wrong area. The area by
 * nesting is compared with the even-odd area of the same polygons, swept strip by strip: they agree if and
 * only if rings merely nest or touch. Crossings that matter less than a hundred-thousandth of the box pass; a tangle of 2,000 crossings does not.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { outlineBounds } from './bounds.ts';
import { flattenOutline } from './flatten.ts';
import { polygonDepths } from './nesting.ts';

interface Edge {
  low: Point;
  high: Point;
}

/** How many crossings may still be followed: a tangle must not keep the reader waiting. */
interface Budget {
  splits: number;
}

const FLATTEN_MM = 0.1;
const MOST_CROSSINGS = 2000;

function edgesOf(polygon: readonly Point[]): Edge[] {
  return polygon.flatMap((a, index): Edge[] => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    if (a.y === b.y) return [];
    return [a.y < b.y ? { low: a, high: b } : { low: b, high: a }];
  });
}

function xAt({ low, high }: Edge, y: number): number {
  return low.x + ((y - low.y) / (high.y - low.y)) * (high.x - low.x);
}

/** Width filled at one height, from the crossings sorted left to right. */
function filledWidth(crossings: readonly number[]): number {
  return crossings.reduce((sum, x, index) => sum + (index % 2 === 0 ? -x : x), 0);
}

/** Area between two heights with no corner between them; split where two edges change places. */
function stripArea(edges: readonly Edge[], bottom: number, top: number, budget: Budget): number {
  // Ordered a shade above the bottom, where edges that meet there have parted.
  const above = bottom + 1e-6 * (top - bottom);
  const ordered = edges
    .map((edge) => ({ low: xAt(edge, bottom), near: xAt(edge, above), high: xAt(edge, top) }))
    .sort((a, b) => a.near - b.near || a.high - b.high);
  for (const [index, right] of ordered.entries()) {
    const left = ordered[index - 1];
    if (left === undefined || left.high <= right.high) continue;
    const gap = right.low - left.low;
    const at = bottom + (gap / (gap + left.high - right.high)) * (top - bottom);
    if (at - bottom < 1e-9 || top - at < 1e-9 || budget.splits === 0) continue;
    budget.splits -= 1;
    return stripArea(edges, bottom, at, budget) + stripArea(edges, at, top, budget);
  }
  // Each end is sorted for itself: at a crossing, rounding may have put two edges in the wrong order.
  const width = (ends: number[]) => filledWidth(ends.sort((a, b) => a - b));
  const both = width(ordered.map(({ low }) => low)) + width(ordered.map(({ high }) => high));
  return (both / 2) * (top - bottom);
}

/** Area of polygons by the even-odd rule, crossings and all, mm²; rough once the budget of crossings is spent. */
export function evenOddAreaMm2(
  polygons: readonly (readonly Point[])[],
  budget: Budget = { splits: MOST_CROSSINGS },
): number {
  const edges = polygons.flatMap(edgesOf).sort((a, b) => a.low.y - b.low.y);
  const heights = [...new Set(edges.flatMap(({ low, high }) => [low.y, high.y]))].sort((a, b) => a - b);
  let area = 0;
  let waiting = 0;
  let active: Edge[] = [];
  for (const [index, top] of heights.entries()) {
    const bottom = heights[index - 1];
    if (bottom === undefined) continue;
    active = active.filter(({ high }) => high.y > bottom);
    for (let next = edges[waiting]; next !== undefined && next.low.y <= bottom; next = edges[waiting]) {
      active.push(next);
      waiting += 1;
    }
    area += stripArea(active, bottom, top, budget);
  }
  return area;
}

function shoelaceMm2(polygon: readonly Point[]): number {
  const doubled = polygon.reduce((sum, a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
  return Math.abs(doubled) / 2;
}

/** Whether rings cross themselves or each other by more than a hundred-thousandth of the bounding box. */
export function outlineCrossesItself(outline: Outline): boolean {
  const polygons = flattenOutline(outline, FLATTEN_MM);
  const depths = polygonDepths(polygons);
  const nested = polygons.reduce(
    (sum, polygon, index) => sum + ((depths[index] ?? 0) % 2 === 0 ? 1 : -1) * shoelaceMm2(polygon),
    0,
  );
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  const allowed = 1e-5 * (maxX - minX) * (maxY - minY);
  const budget = { splits: MOST_CROSSINGS };
  const swept = evenOddAreaMm2(polygons, budget);
  return budget.splits === 0 || Math.abs(nested - swept) > allowed;
}
