/** Walking along a ring: every segment with the point it starts from, and the straight line that closes it. */
import type { Point, Ring, Segment } from '../../domain/outline.ts';

export interface Step {
  from: Point;
  segment: Segment;
}

/** The ring's segments in order with their starting points; a closing line is added where the ring lacks it. */
export function stepsOf(ring: Ring): Step[] {
  const steps: Step[] = [];
  let from = ring.start;
  for (const segment of ring.segments) {
    steps.push({ from, segment });
    from = segment.to;
  }
  if (from.x !== ring.start.x || from.y !== ring.start.y) {
    steps.push({ from, segment: { kind: 'line', to: ring.start } });
  }
  return steps;
}
