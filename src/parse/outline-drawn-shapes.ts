/** SVG's basic shapes as path data, by the rules of SVG 2 (W3C, chapter 10 Basic Shapes; from memory). */
import type { Result } from '../domain/result.ts';
import { fail, succeed } from '../domain/result.ts';
import type { DrawnElement } from './outline-elements.ts';
import { errorAt } from './outline-place.ts';
import { quote } from './quote.ts';

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

type Reader = (name: string, fallback?: number) => number;

function ellipseData(cx: number, cy: number, rx: number, ry: number): string {
  if (rx === 0 || ry === 0) return '';
  return `M${cx + rx} ${cy}A${rx} ${ry} 0 0 1 ${cx - rx} ${cy}A${rx} ${ry} 0 0 1 ${cx + rx} ${cy}Z`;
}

function rectData(read: Reader, has: (name: string) => boolean): string {
  const [x, y, width, height] = [read('x', 0), read('y', 0), read('width'), read('height')];
  const given = has('rx') ? read('rx') : has('ry') ? read('ry') : 0;
  // SVG itself limits the corner to half the side.
  const rx = Math.min(given, width / 2);
  const ry = Math.min(has('ry') ? read('ry') : given, height / 2);
  const corner = (dx: number, dy: number) =>
    rx > 0 && ry > 0 ? `a${rx} ${ry} 0 0 1 ${dx} ${dy}` : `l${dx} ${dy}`;
  const across = width - 2 * rx;
  const down = height - 2 * ry;
  return (
    `M${x + rx} ${y}h${across}${corner(rx, ry)}v${down}${corner(-rx, ry)}` +
    `h${-across}${corner(-rx, -ry)}v${-down}${corner(rx, -ry)}Z`
  );
}

function pointsData(points: string): string {
  const numbers = points.trim().split(/[\s,]+/);
  if (points.trim() === '' || numbers.length < 6) return '';
  return `M${numbers.join(' ')}Z`;
}

/** Whether an element's name is one of the shapes that an outline may be drawn with. */
export function isDrawnShape(name: string): boolean {
  return ['path', 'polygon', 'polyline', 'rect', 'circle', 'ellipse'].includes(name);
}

function dataOf(element: DrawnElement, read: Reader): string {
  const { name, attributes } = element;
  const has = (attribute: string) => attributes.has(attribute) && attributes.get(attribute) !== 'auto';
  if (name === 'rect') return rectData(read, has);
  if (name === 'circle') return ellipseData(read('cx', 0), read('cy', 0), read('r'), read('r'));
  if (name === 'ellipse') return ellipseData(read('cx', 0), read('cy', 0), read('rx'), read('ry'));
  return name === 'path' ? (attributes.get('d') ?? '') : pointsData(attributes.get('points') ?? '');
}

/** Path data of a shape; a size that is missing, negative or not a plain number is a problem. */
export function pathData(element: DrawnElement): Result<string> {
  const wrong = new Set<string>();
  const read: Reader = (name, fallback) => {
    const text = element.attributes.get(name)?.trim();
    if (text === undefined && fallback !== undefined) return fallback;
    const value = text !== undefined && NUMBER.test(text) ? Number(text) : Number.NaN;
    const size = !['x', 'y', 'cx', 'cy'].includes(name);
    if (Number.isFinite(value) && !(size && value < 0)) return value;
    wrong.add(name);
    return 0;
  };
  const data = dataOf(element, read);
  if (wrong.size === 0) return succeed(data);
  return fail(
    ...[...wrong].map((name) =>
      errorAt(
        element.place,
        'outline-number',
        `${name} of a ${element.name} is ${quote(element.attributes.get(name) ?? '')}, not a plain number`,
        `Write it in the drawing's own units, without a unit or %: ${name}="40".`,
      ),
    ),
  );
}
