/** Strips down one column and then the other, page after page; the last page's columns end together. */
import type { FlowedPage } from '../sheet/flow.ts';
import type { Strip } from '../sheet/strip.ts';

interface PlacedStrip {
  strip: Strip;
  column: 0 | 1;
  yMm: number;
}

export type ColumnPage = PlacedStrip[];

interface Filled {
  placed: PlacedStrip[];
  /** How many strips found room. */
  count: number;
}

/** Fills columns that reach from `topMm` to `bottomMm`; a strip that is kept with the next goes along with it. */
function filled(strips: readonly Strip[], topMm: number, bottomMm: number): Filled {
  const placed: PlacedStrip[] = [];
  let count = 0;
  for (const column of [0, 1] as const) {
    let yMm = topMm;
    while (count < strips.length) {
      const strip = strips[count];
      const next = strips[count + 1];
      if (!strip) break;
      const space = yMm === topMm ? 0 : strip.spaceMm;
      const along = strip.keepWithNext && next ? next.spaceMm + next.heightMm : 0;
      if (yMm + space + strip.heightMm + along > bottomMm) break;
      placed.push({ strip, column, yMm: yMm + space });
      yMm += space + strip.heightMm;
      count += 1;
    }
  }
  return { placed, count };
}

const STEP_MM = 2;

/** The shortest columns that still hold everything. */
function evened(strips: readonly Strip[], topMm: number, bottomMm: number): Filled {
  for (let foot = topMm + STEP_MM; foot < bottomMm; foot += STEP_MM) {
    const even = filled(strips, topMm, foot);
    if (even.count === strips.length) return even;
  }
  return filled(strips, topMm, bottomMm);
}

/** `opening` runs across both columns at the top of the first page. Throws when a strip is taller than a page. */
export function twoColumns(
  opening: readonly Strip[],
  strips: readonly Strip[],
  heightMm: number,
): ColumnPage[] {
  const pages: ColumnPage[] = [];
  let topMm = 0;
  const head = opening.map((strip, index): PlacedStrip => {
    const yMm = topMm + (index === 0 ? 0 : strip.spaceMm);
    topMm = yMm + strip.heightMm;
    return { strip, column: 0, yMm };
  });
  topMm += 4;
  let rest = strips;
  while (rest.length > 0) {
    const whole = evened(rest, topMm, heightMm);
    if (whole.count === 0) throw new Error('an index entry is taller than the page');
    pages.push(pages.length === 0 ? [...head, ...whole.placed] : whole.placed);
    rest = rest.slice(whole.count);
    topMm = 0;
  }
  return pages.length === 0 ? [head] : pages;
}

/** Draws the strips of a page in one structure section; `stepMm` is from one column's left edge to the other's. */
export const columnPage = (page: ColumnPage, section: string, stepMm: number): FlowedPage => ({
  draw: (surface, xMm, yMm) =>
    surface.within('Sect', { key: section }, () => {
      for (const { strip, column, yMm: y } of page) strip.draw(surface, xMm + column * stepMm, yMm + y);
    }),
});
