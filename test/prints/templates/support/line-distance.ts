/** How far two drawings are apart: the greatest distance from any point of one to the other, mm. */
import type { Point } from '../../../../src/domain/outline.ts';

interface Edge {
  a: Point;
  b: Point;
}

const edgesOf = (lines: readonly (readonly Point[])[]): Edge[] =>
  lines.flatMap((line) => line.slice(1).map((b, index) => ({ a: line[index] ?? b, b })));

function distance({ x, y }: Point, { a, b }: Edge): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / square));
  return Math.hypot(x - a.x - t * dx, y - a.y - t * dy);
}

/** Points at most a millimetre apart. */
function sampled(edges: readonly Edge[]): Point[] {
  return edges.flatMap(({ a, b }) => {
    const pieces = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y)));
    return Array.from({ length: pieces }, (_, index) => {
      const t = (index + 1) / pieces;
      return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
    });
  });
}

function farthest(from: readonly Edge[], to: readonly Edge[]): number {
  let worst = 0;
  for (const point of sampled(from)) {
    let nearest = Number.POSITIVE_INFINITY;
    for (const edge of to) {
      nearest = Math.min(nearest, distance(point, edge));
      if (nearest <= worst) break;
    }
    worst = Math.max(worst, nearest);
  }
  return worst;
}

export function linesApartMm(
  one: readonly (readonly Point[])[],
  other: readonly (readonly Point[])[],
): number {
  const [a, b] = [edgesOf(one), edgesOf(other)];
  return Math.max(farthest(a, b), farthest(b, a));
}

export function boundsOf(lines: readonly (readonly Point[])[]) {
  const points = lines.flat();
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}

/** Moved so that the middle of the box is the origin. */
export function centredLines(lines: readonly (readonly Point[])[]): Point[][] {
  const { minX, maxX, minY, maxY } = boundsOf(lines);
  const [dx, dy] = [(minX + maxX) / 2, (minY + maxY) / 2];
  return lines.map((line) => line.map(({ x, y }) => ({ x: x - dx, y: y - dy })));
}
