/** A print drawn on a surface that only notes what is painted, and within which box. */
import type { Paint, PathStep, Print, Surface } from '../../src/prints/sheet/surface.ts';

export interface PaintLog {
  page: number;
  paint: Paint;
  box: { minX: number; minY: number; maxX: number; maxY: number };
}

/** Box around the points of a path, curves by their ends and handles' ends only. */
function boxOf(steps: readonly PathStep[]): PaintLog['box'] {
  const spots = steps.flatMap((step) => (step.op === 'close' ? [] : [{ x: step.x, y: step.y }]));
  const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

/** Draws nothing, and goes into everything. */
const SILENT: Surface = {
  text: () => undefined,
  path: () => undefined,
  within: (_, __, body) => body(),
  artifact: (body) => body(),
  clip: (_, body) => body(),
  link: (_, __, ___, body) => body(),
  anchor: () => undefined,
  bookmark: () => undefined,
};

export function recordedPages({ pages }: Print): PaintLog[] {
  const log: PaintLog[] = [];
  pages.forEach((page, at) => {
    const surface: Surface = {
      ...SILENT,
      path: (steps, paint) => log.push({ page: at, paint, box: boxOf(steps) }),
    };
    page.draw(surface, { xMm: 0, yMm: 0 });
  });
  return log;
}

/** What each page says, in the order in which it is drawn, words apart by one space. */
export function recordedText({ pages }: Print): string[] {
  return pages.map((page) => {
    const said: string[] = [];
    const surface: Surface = {
      ...SILENT,
      text: ({ text }) => said.push(text),
    };
    page.draw(surface, { xMm: 0, yMm: 0 });
    return said.join(' ').replace(/\s+/g, ' ');
  });
}
