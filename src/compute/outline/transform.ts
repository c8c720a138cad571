/** Moving, turning and scaling an outline; arcs stay arcs. */
import type { Outline, Point, Ring, Segment } from '../../domain/outline.ts';
import { outlineBounds } from './bounds.ts';

export interface Placement {
  /** Above 0; 1 when left out. */
  scale?: number;
  /** Radians, counter-clockwise, about the origin. */
  turn?: number;
  dx?: number;
  dy?: number;
}

type Move = (point: Point) => Point;

function mapSegment(segment: Segment, move: Move, scale: number, turn: number): Segment {
  const to = move(segment.to);
  if (segment.kind === 'line') return { kind: 'line', to };
  if (segment.kind === 'cubic') return { kind: 'cubic', c1: move(segment.c1), c2: move(segment.c2), to };
  return {
    ...segment,
    to,
    centre: move(segment.centre),
    rx: segment.rx * scale,
    ry: segment.ry * scale,
    rotation: segment.rotation + turn,
  };
}

/** The outline scaled, then turned, then moved. */
export function transformOutline(outline: Outline, placement: Placement): Outline {
  const { scale = 1, turn = 0, dx = 0, dy = 0 } = placement;
  if (!(scale > 0)) throw new RangeError('An outline can only be scaled by a factor above 0.');
  const cos = scale * Math.cos(turn);
  const sin = scale * Math.sin(turn);
  const move: Move = ({ x, y }) => ({ x: x * cos - y * sin + dx, y: x * sin + y * cos + dy });
  const rings = outline.rings.map(
    (ring): Ring => ({
      start: move(ring.start),
      segments: ring.segments.map((segment) => mapSegment(segment, move, scale, turn)),
    }),
  );
  return { rings };
}

/** The outline with the middle of its bounding box on the origin. */
export function centreOutline(outline: Outline): Outline {
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  return transformOutline(outline, { dx: -(minX + maxX) / 2, dy: -(minY + maxY) / 2 });
}
