/** Length of a closed ring of points, in the points' own unit. */
import type { Point } from '../../domain/outline.ts';

export function ringLength(ring: readonly Point[]): number {
  let length = 0;
  ring.forEach((point, index) => {
    const next = ring[(index + 1) % ring.length] ?? point;
    length += Math.hypot(next.x - point.x, next.y - point.y);
  });
  return length;
}
