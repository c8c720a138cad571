/** Path data as closed rings in mm, y up. Every command of SVG paths; an open path is closed. */
import svgpath from 'svgpath';
import type { Point, Ring, Segment } from '../domain/outline.ts';
import type { Result } from '../domain/result.ts';
import { fail, succeed } from '../domain/result.ts';
import { centredArc } from './outline-arc.ts';
import type { DrawnElement } from './outline-elements.ts';
import { errorAt } from './outline-place.ts';
import type { Scale } from './outline-scale.ts';
import { quote } from './quote.ts';

const TRANSFORM = /^(\s*,?\s*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([\s,+\-.\deE]*)\))*\s*$/;
const COUNTS: Record<string, readonly number[]> = {
  matrix: [6],
  translate: [1, 2],
  scale: [1, 2],
  rotate: [1, 3],
  skewX: [1],
  skewY: [1],
};

function isTransform(text: string): boolean {
  if (!TRANSFORM.test(text)) return false;
  return [...text.matchAll(/(\w+)\s*\(([^)]*)\)/g)].every(([, name = '', list = '']) => {
    const numbers = list.trim().split(/[\s,]+/);
    const finite = numbers.every((number) => number !== '' && Number.isFinite(Number(number)));
    return finite && (COUNTS[name] ?? []).includes(numbers.length);
  });
}

const third = (a: Point, b: Point): Point => ({
  x: a.x + (2 / 3) * (b.x - a.x),
  y: a.y + (2 / 3) * (b.y - a.y),
});

/** One absolute command other than M and Z as a segment. */
function segmentOf(command: string, n: readonly number[], from: Point): Segment | null {
  const at = (index: number): Point => ({ x: n[index] ?? Number.NaN, y: n[index + 1] ?? Number.NaN });
  if (command === 'L') return { kind: 'line', to: at(0) };
  if (command === 'H') return { kind: 'line', to: { x: at(0).x, y: from.y } };
  if (command === 'V') return { kind: 'line', to: { x: from.x, y: at(0).x } };
  if (command === 'C') return { kind: 'cubic', c1: at(0), c2: at(2), to: at(4) };
  if (command === 'Q') return { kind: 'cubic', c1: third(from, at(0)), c2: third(at(2), at(0)), to: at(2) };
  if (command !== 'A') return null;
  const [rx = 0, ry = 0, rotationDeg = 0, large = 0, positive = 0] = n;
  const radii = { rx: Math.abs(rx), ry: Math.abs(ry), rotationDeg };
  return centredArc(from, { ...radii, large: large === 1, positive: positive === 1, to: at(5) });
}

function ringsOf(path: ReturnType<typeof svgpath>): Ring[] {
  const rings: Ring[] = [];
  let start: Point = { x: 0, y: 0 };
  let here: Point = start;
  let ring: Ring | null = null;
  path.iterate(([command, ...rest]) => {
    const numbers = rest.map(Number);
    if (command === 'M' || command === 'Z') {
      start = command === 'M' ? { x: numbers[0] ?? 0, y: numbers[1] ?? 0 } : start;
      here = start;
      ring = null;
      return;
    }
    const segment = segmentOf(command, numbers, here);
    if (segment === null) return;
    if (ring === null) {
      ring = { start, segments: [] };
      rings.push(ring);
    }
    ring.segments.push(segment);
    here = segment.to;
  });
  return rings;
}

/** Farther out than this from the corner no drawing of a tin or a logo has anything; lines there would never end. */
const FARTHEST_MM = 100_000;

function isNear(rings: readonly Ring[]): boolean {
  const near = (value: number): boolean => Math.abs(value) <= FARTHEST_MM;
  const nearPoint = ({ x, y }: Point): boolean => near(x) && near(y);
  const nearSegment = (segment: Segment): boolean => {
    if (segment.kind === 'cubic' && !(nearPoint(segment.c1) && nearPoint(segment.c2))) return false;
    if (segment.kind === 'arc' && !(near(segment.rx) && near(segment.ry) && nearPoint(segment.centre)))
      return false;
    return nearPoint(segment.to);
  };
  return rings.every(({ start, segments }) => nearPoint(start) && segments.every(nearSegment));
}

/** The rings of a shape's path data after its transforms, scaled to mm and turned y up. */
export function drawnRings(data: string, element: DrawnElement, scale: Scale): Result<Ring[]> {
  const { place, transform } = element;
  if (!isTransform(transform)) {
    const message = `The transform ${quote(transform)} cannot be read`;
    const hint = 'Use matrix, translate, scale, rotate, skewX or skewY with plain numbers.';
    return fail(errorAt(place, 'outline-transform', message, hint));
  }
  const path: ReturnType<typeof svgpath> & { err?: string } = svgpath(data);
  const reason = /r/i.test(data) ? 'unknown command' : (path.err ?? '').replace(/^SvgPath: /, '');
  if (reason !== '') {
    const message = `The ${element.name} cannot be read: ${quote(reason)}`;
    return fail(errorAt(place, 'outline-path-broken', message, 'Save the drawing again as plain SVG.'));
  }
  const rings = ringsOf(path.abs().unshort().transform(transform).matrix([scale.x, 0, 0, -scale.y, 0, 0]));
  if (isNear(rings)) return succeed(rings);
  const message = `The ${element.name} reaches farther than ${FARTHEST_MM / 1000} m out`;
  const hint = 'Look for a slip in its numbers and in the viewBox, or save the drawing again as plain SVG.';
  return fail(errorAt(place, 'outline-size-out-of-range', message, hint));
}
