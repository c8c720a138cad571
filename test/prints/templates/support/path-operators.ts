/** Strokes of a page read from its own content operators: subpaths in mm from the top left, y down, curves flattened. */
import type { Point } from '../../../../src/domain/outline.ts';

export interface ReadStroke {
  lineWidthPt: number;
  dashed: boolean;
  subpaths: Point[][];
}

const MM_PER_PT = 25.4 / 72;
const PIECES = 40;

function cubicPoints(from: Point, n: number[]): Point[] {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x = 0, y = 0] = n;
  return Array.from({ length: PIECES }, (_, index) => {
    const t = (index + 1) / PIECES;
    const s = 1 - t;
    const at = (a: number, b: number, c: number, d: number) =>
      s ** 3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t ** 3 * d;
    return { x: at(from.x, x1, x2, x), y: at(from.y, y1, y2, y) };
  });
}

/** Throws when the page's first matrix is not the plain flip that the writer sets up: places would be wrong. */
export function readStrokes(content: string): ReadStroke[] {
  if (!/^1 0 0 -1 0 [\d.]+ cm$/m.test(content)) throw new Error('the page is scaled or turned');
  if ((content.match(/ cm$/gm) ?? []).length !== 1) throw new Error('more than one matrix on the page');
  const strokes: ReadStroke[] = [];
  let width = 1;
  let dashed = false;
  let subpaths: Point[][] = [];
  for (const line of content.split('\n')) {
    const parts = line.split(' ');
    const operator = parts.at(-1);
    const numbers = parts.slice(0, -1).map((part) => Number(part) * MM_PER_PT);
    const path = subpaths.at(-1);
    const last = path?.at(-1);
    const [x = 0, y = 0] = numbers;
    if (operator === 'q') {
      width = 1;
      dashed = false;
      subpaths = [];
    } else if (operator === 'w') width = Number(parts[0]);
    else if (operator === 'd' && line !== '[] 0 d') dashed = true;
    else if (operator === 'm') subpaths.push([{ x, y }]);
    else if (operator === 'l') path?.push({ x, y });
    else if (operator === 'c' && last) path?.push(...cubicPoints(last, numbers));
    else if (operator === 'h' && path?.[0]) path.push({ ...path[0] });
    else if (operator === 'S') strokes.push({ lineWidthPt: width, dashed, subpaths });
  }
  return strokes;
}
