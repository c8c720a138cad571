/**
 * Which rings lie inside which: by the even-odd rule a ring inside an odd number of others is a hole,
 * whichever way it was drawn. Valid for rings that do not cross; they may touch.
 */
import type { Outline, Point } from '../../domain/outline.ts';
import { flattenOutline } from './flatten.ts';

/** Whether the point lies in the polygon by the even-odd rule. */
export function isInside(point: Point, polygon: readonly Point[]): boolean {
  let inside = false;
  let before = polygon[polygon.length - 1];
  for (const corner of polygon) {
    if (before !== undefined && corner.y > point.y !== before.y > point.y) {
      const x = corner.x + ((point.y - corner.y) / (before.y - corner.y)) * (before.x - corner.x);
      if (point.x < x) inside = !inside;
    }
    before = corner;
  }
  return inside;
}

/** A vote over the middles of the edges: rings may share walls, and a single point there proves nothing. */
function liesInside(inner: readonly Point[], outer: readonly Point[]): boolean {
  const inside = inner.filter((point, index) => {
    const next = inner[(index + 1) % inner.length] ?? point;
    return isInside({ x: (point.x + next.x) / 2, y: (point.y + next.y) / 2 }, outer);
  });
  return inside.length * 2 > inner.length;
}

/** How many other rings each polygon lies inside: even = outer wall, odd = hole. */
export function polygonDepths(polygons: readonly (readonly Point[])[]): number[] {
  if (polygons.length === 1) return [0];
  return polygons.map(
    (inner) => polygons.filter((outer) => outer !== inner && liesInside(inner, outer)).length,
  );
}

/** How many other rings each ring of the outline lies inside: even = outer wall, odd = hole. */
export function ringDepths(outline: Outline): number[] {
  if (outline.rings.length === 1) return [0];
  return polygonDepths(flattenOutline(outline, 0.05));
}
