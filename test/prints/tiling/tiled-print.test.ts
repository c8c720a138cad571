/**
 * Tiles put together by their crosses alone, from the operators of the PDF: what was on the sheet is there again, in
 * its place, whole.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { sheetContext } from '../../../src/prints/sheet/sheet-context.ts';
import type { Print, Surface } from '../../../src/prints/sheet/surface.ts';
import { LAP_MM, MARGIN_MM, tileGrid } from '../../../src/prints/tiling/tile-grid.ts';
import { tiledPrint } from '../../../src/prints/tiling/tiled-print.ts';
import { wallPapers } from '../../../src/prints/wall/wall-paper.ts';
import { tilingWordsFor } from '../../../src/wording/tiling/index.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../../reading-back/read-pdf.ts';
import { nodesWithin } from '../../reading-back/structure.ts';
import { sampleFonts } from '../../samples/fonts.ts';
import { sampleStyle } from '../../samples/house-style.ts';
import { printed, words } from '../../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';
import { type DrawnPage, drawnPage, type Spot } from './drawn-page.ts';

const fonts = sampleFonts();
const context = sheetContext(sampleStyle, fonts.metrics);
const PAPERS = (['A4', 'Letter'] as const).flatMap((home) => wallPapers(home));

/** Every 31 mm a box and a word of its own, so that no two places look alike. */
function grid(widthMm: number, heightMm: number): Print {
  const draw = (surface: Surface): void =>
    surface.within('P', {}, () => {
      for (let y = 20; y < heightMm - 10; y += 31)
        for (let x = 12; x < widthMm - 20; x += 31) {
          const [w, h] = [8 + (x % 7), 5 + (y % 9)];
          surface.path(
            [
              { op: 'move', x, y },
              { op: 'line', x: x + w, y },
              { op: 'cubic', x1: x + w, y1: y + h, x2: x + w, y2: y + h, x, y: y + h },
              { op: 'close' },
            ],
            { stroke: '#000000', lineWidthPt: 0.5 },
          );
          surface.text(words(`${x}-${y}`, x, y - 1));
        }
    });
  const page = { widthMm, heightMm, draw };
  return { path: 'wall/grid-a2', title: 'Grid', lang: 'en-GB', subject: 'For a test', pages: [page] };
}

const distance = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

/** How far the second page lies from the first: the crosses of its left (or top) lap on those of the other's right (or foot). */
function shiftBetween(one: DrawnPage, other: DrawnPage, way: 'across' | 'down'): Spot {
  const axis = way === 'across' ? 'x' : 'y';
  const size = way === 'across' ? 'width' : 'height';
  const far = one.crosses.filter((cross) => cross[axis] > one.clip[axis] + one.clip[size] - LAP_MM);
  const near = other.crosses.filter((cross) => cross[axis] < other.clip[axis] + LAP_MM);
  const inOrder = (crosses: Spot[]): Spot[] => [...crosses].sort((a, b) => a.x + a.y - b.x - b.y);
  const shifts = inOrder(near).map((cross, index) => {
    const there = inOrder(far)[index] ?? { x: Number.NaN, y: Number.NaN };
    return { x: there.x - cross.x, y: there.y - cross.y };
  });
  expect(far).toHaveLength(near.length);
  expect(shifts.length).toBeGreaterThanOrEqual(2);
  const [first = { x: Number.NaN, y: Number.NaN }] = shifts;
  for (const shift of shifts) expect(distance(shift, first)).toBeLessThan(0.01);
  return first;
}

describe.each(PAPERS)('$name on $homePaper', (paper) => {
  const sheet = grid(paper.widthMm, paper.heightMm);
  const tiling = { sheetName: paper.name, paper: paper.homePaper, words: tilingWordsFor('en-GB') };
  const tiled = tiledPrint(sheet, tiling, context);
  const { columns, rows } = tileGrid(
    { widthMm: paper.widthMm, heightMm: paper.heightMm },
    paper.homePaper === 'A4' ? { widthMm: 210, heightMm: 297 } : { widthMm: 215.9, heightMm: 279.4 },
  );
  let pdf: ReadPdf;
  let pages: DrawnPage[];
  let whole: DrawnPage;
  let bytes: Uint8Array;
  /** Of each tile from the first, found by going from neighbour to neighbour. */
  let places: Spot[];

  beforeAll(async () => {
    bytes = printed(tiled, fonts);
    pdf = await readPdf(bytes);
    pages = pageContents(rawObjects(bytes)).map(drawnPage);
    const [first = ''] = pageContents(rawObjects(printed(sheet, fonts)));
    whole = drawnPage(first);
    places = [];
    for (const [index, page] of pages.entries()) {
      const from = index === 0 ? null : index % columns > 0 ? index - 1 : index - columns;
      const before = from === null ? null : pages[from];
      const at = from === null ? null : places[from];
      if (!before || !at) places.push({ x: -MARGIN_MM, y: -MARGIN_MM });
      else {
        const shift = shiftBetween(before, page, from === index - 1 ? 'across' : 'down');
        places.push({ x: at.x + shift.x, y: at.y + shift.y });
      }
    }
  });

  it('is at most eight pages of home paper', () => {
    expect(pages).toHaveLength(columns * rows);
    expect(pages.length).toBeLessThanOrEqual(8);
  });

  it('covers the sheet without a gap, each window lapping the next by 12 mm', () => {
    const windows = pages.map(({ clip }, index) => {
      const { x = 0, y = 0 } = places[index] ?? {};
      return {
        left: clip.x + x,
        top: clip.y + y,
        right: clip.x + clip.width + x,
        bottom: clip.y + clip.height + y,
      };
    });
    for (const [index, window] of windows.entries()) {
      const next = windows[index + 1];
      if (next && (index + 1) % columns > 0) expect(window.right - next.left).toBeCloseTo(LAP_MM, 2);
      const below = windows[index + columns];
      if (below) expect(window.bottom - below.top).toBeCloseTo(LAP_MM, 2);
    }
    expect(windows[0]?.left).toBeCloseTo(0, 2);
    expect(windows[0]?.top).toBeCloseTo(0, 2);
    expect(windows.at(-1)?.right).toBeGreaterThanOrEqual(paper.widthMm);
    expect(windows.at(-1)?.bottom).toBeGreaterThanOrEqual(paper.heightMm);
  });

  it('puts together by its crosses to the very sheet: every path whole, in its place, and nothing else', () => {
    const key = (steps: Spot[], shift: Spot): string =>
      steps.map(({ x, y }) => `${(x + shift.x).toFixed(1)},${(y + shift.y).toFixed(1)}`).join(' ');
    const wanted = new Set(whole.inside.map((path) => key(path, { x: 0, y: 0 })));
    const seen = new Set(
      pages.flatMap(({ inside }, index) => inside.map((path) => key(path, places[index] ?? { x: 0, y: 0 }))),
    );
    expect(wanted.size).toBeGreaterThan(90);
    expect(seen).toEqual(wanted);
  });

  it('shows every word in its place', () => {
    const found = new Map<string, Spot>();
    for (const [index, page] of pdf.pages.entries())
      for (const { text, xMm, yMm, contentId } of page.texts)
        if (contentId !== null) {
          const { x = 0, y = 0 } = places[index] ?? {};
          found.set(text, { x: xMm + x, y: yMm + y });
        }
    for (const [text, at] of found) {
      const [x = 0, y = 0] = text.split('-').map(Number);
      expect(distance(at, { x, y: y - 1 }), text).toBeLessThan(0.05);
    }
    const count = whole.inside.length;
    expect(found.size).toBe(count);
  });

  it('names each tile, says how to join it, and keeps its own words inside the margins', () => {
    const names = pdf.pages.map(({ texts }) => texts.find(({ text }) => /^[A-D][1-3]$/.test(text))?.text);
    expect(new Set(names).size).toBe(pages.length);
    expect(names.slice(0, 2)).toEqual(['A1', 'A2']);
    const own = pdf.pages.map((page) => ({
      ...page,
      texts: page.texts.filter(({ contentId }) => contentId === null),
    }));
    const margins = { top: MARGIN_MM, right: MARGIN_MM, bottom: MARGIN_MM, left: MARGIN_MM };
    expect(sheetFaults({ ...pdf, pages: own }, margins)).toEqual([]);
    for (const page of own)
      expect(page.texts.map(({ text }) => text).join(' ')).toContain(
        'Print at 100 %. Trim the edges that have ticks',
      );
  });

  it('carries little structure, and a title that names the file for reading aloud', () => {
    expect(pdf.title).toContain('grid-a2.pdf');
    expect(pdf.title).toContain(`${paper.name} on `);
    for (const page of pdf.pages)
      expect(page.tree === null ? [] : nodesWithin(page.tree, 'P')).toHaveLength(1);
    expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
  });
});
