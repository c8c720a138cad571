import jsQR from 'jsqr';
import { beforeAll, describe, expect, it } from 'vitest';
import type { CardSize } from '../../../src/domain/printable.ts';
import { pageImage } from '../../reading-back/page-image.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { type ReadPage, type ReadPdf, type ReadText, readPdf } from '../../reading-back/read-pdf.ts';
import { rolesWithin } from '../../reading-back/structure.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';
import { cardKitchen, cardsInSize, type Kitchen, type MadeCards } from './made-cards.ts';

/** Width, height, and how many go on a sheet of A4 or Letter with bleed, marks and a printer's bare edge. */
const CUT: [CardSize, number, number, number][] = [
  ['A6', 105, 148, 2],
  ['index 3 x 5 in', 127, 76.2, 4],
  ['index 4 x 6 in', 152.4, 101.6, 2],
  ['index 5 x 8 in', 203.2, 127, 1],
  ['A5', 148, 210, 1],
];
const LONG = process.env.TINWRIGHT_LONG === '1';
const SOME = LONG ? CUT : CUT.filter(([size]) => size !== 'index 4 x 6 in' && size !== 'index 5 x 8 in');
const BLEED_MM = 3;
const RECIPES = ['dark-chocolate-oil', 'ginger-melted'];

let demo: Kitchen;
beforeAll(async () => {
  demo = await cardKitchen('content', RECIPES);
});

interface Made {
  oneUp: MadeCards[];
  several: MadeCards;
  pdf: ReadPdf;
}
const known = new Map<CardSize, Promise<Made>>();

async function make(size: CardSize): Promise<Made> {
  const made = cardsInSize(demo.views, demo.content.houseStyle, size, demo.content);
  const several = made.find(({ print }) => print.path.startsWith('recipe-cards/to-cut-'));
  if (!several) throw new Error('no sheets to cut');
  return { oneUp: made.filter((one) => one !== several), several, pdf: await readPdf(several.bytes) };
}

function madeOnce(size: CardSize): Promise<Made> {
  const found = known.get(size) ?? make(size);
  known.set(size, found);
  return found;
}

interface Rectangle {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Lines of the first path of a page, mm: the cutting marks are drawn before anything else. */
function markLines(content: string): [number, number, number, number][] {
  const path = content.slice(0, content.indexOf('\nS\n'));
  const points = [...path.matchAll(/^(-?[\d.]+) (-?[\d.]+) ([ml])$/gm)];
  const lines: [number, number, number, number][] = [];
  const mm = (point: string | undefined): number => (Number(point) * 25.4) / 72;
  for (let index = 0; index < points.length; index += 2) {
    const [from, to] = [points[index], points[index + 1]];
    if (from?.[3] !== 'm' || to?.[3] !== 'l') throw new Error('not a line');
    lines.push([mm(from[1]), mm(from[2]), mm(to[1]), mm(to[2])]);
  }
  return lines;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.02;

/** Where the marks say the cards are: between neighbouring cuts that lie a card's width or height apart. */
function trimmedCards(content: string, width: number, height: number): Rectangle[] {
  const lines = markLines(content);
  const across = (values: number[]) =>
    [...new Set(values.map((mm) => mm.toFixed(2)))].map(Number).sort((a, b) => a - b);
  const xs = across(lines.filter(([x1, , x2]) => near(x1, x2)).map(([x]) => x));
  const ys = across(lines.filter(([, y1, , y2]) => near(y1, y2)).map(([, y]) => y));
  return ys.flatMap((top) =>
    xs.flatMap((left) => {
      const right = xs.find((x) => near(x - left, width));
      const bottom = ys.find((y) => near(y - top, height));
      return right === undefined || bottom === undefined ? [] : [{ left, right, top, bottom }];
    }),
  );
}

const on = ({ left, right, top, bottom }: Rectangle, { xMm, yMm }: ReadText): boolean =>
  xMm > left && xMm < right && yMm > top && yMm < bottom;

/** All text of one card on a sheet, top to bottom. */
const wordsOn = (page: ReadPage, card: Rectangle): string =>
  page.texts
    .filter((text) => on(card, text))
    .map(({ text }) => text.trim())
    .join(' ');

describe.each(SOME)('cards of %s to cut out', (size, width, height, perSheet) => {
  it('have a mark outside the bleed at both ends of every cut, and none on a card', async () => {
    const { several, pdf } = await madeOnce(size);
    for (const [index, content] of pageContents(rawObjects(several.bytes)).entries()) {
      const cards = trimmedCards(content, width, height);
      expect(cards.length).toBe(perSheet);
      const lines = markLines(content);
      // Four ends for every card's edges that no neighbour's cut shares.
      const columns = new Set(cards.map(({ left }) => left.toFixed(1))).size;
      const rows = cards.length / columns;
      expect(lines.length).toBe(4 * columns + 4 * rows);
      for (const [x1, y1, x2, y2] of lines) {
        for (const { left, right, top, bottom } of cards) {
          const clear = (from: number, to: number, low: number, high: number) =>
            Math.max(from, to) <= low - BLEED_MM + 0.02 || Math.min(from, to) >= high + BLEED_MM - 0.02;
          expect(clear(x1, x2, left, right) || clear(y1, y2, top, bottom)).toBe(true);
        }
        const page = pdf.pages[index];
        for (const x of [x1, x2]) expect(x > 2.9 && x < (page?.widthMm ?? 0) - 2.9).toBe(true);
        for (const y of [y1, y2]) expect(y > 2.9 && y < (page?.heightMm ?? 0) - 2.9).toBe(true);
      }
    }
  });

  it('have each back behind its front when the sheet is turned', async () => {
    const { several, pdf, oneUp } = await madeOnce(size);
    const contents = pageContents(rawObjects(several.bytes));
    const single = await Promise.all(oneUp.map(({ bytes }) => readPdf(bytes)));
    const faces = single.flatMap(({ pages }) =>
      pages.map((page) => page.texts.map(({ text }) => text.trim()).join(' ')),
    );
    expect(pdf.pages.length).toBe(2 * Math.ceil(faces.length / (2 * perSheet)));
    const found: string[] = [];
    for (let sheet = 0; sheet < pdf.pages.length; sheet += 2) {
      const [front, back] = [pdf.pages[sheet], pdf.pages[sheet + 1]];
      if (!front || !back) throw new Error('a sheet has two sides');
      for (const card of trimmedCards(contents[sheet] ?? '', width, height)) {
        // Turned over its upright middle, what was left lies right: x becomes the sheet's width less x.
        const behind = { ...card, left: front.widthMm - card.right, right: front.widthMm - card.left };
        const backs = trimmedCards(contents[sheet + 1] ?? '', width, height);
        expect(backs.some(({ left, top }) => near(left, behind.left) && near(top, behind.top))).toBe(true);
        found.push(wordsOn(front, card), wordsOn(back, behind));
      }
      const turned = front.widthMm < front.heightMm ? 'long' : 'short';
      expect(front.texts.some(({ text }) => text.includes(`turning on the ${turned} edge`))).toBe(true);
    }
    expect(found.filter((text) => text !== '')).toEqual(faces);
  });

  it('keep all text on the cards, and carry one paragraph a face and the name of the accessible file', async () => {
    const { several, pdf } = await madeOnce(size);
    expect(sheetFaults(pdf, { top: 3, right: 3, bottom: 3, left: 3 })).toEqual([]);
    expect(pageContents(rawObjects(several.bytes)).flatMap(unmarkedPainting)).toEqual([]);
    const roles = new Set(pdf.pages.flatMap(({ tree }) => (tree ? rolesWithin(tree) : [])));
    expect([...roles].sort()).toEqual(['Document', 'P', 'Root', 'Sect']);
    const slug = several.print.path.replace(/.*to-cut-(.*)-(a4|letter)$/, '$1');
    expect(pdf.title).toContain(`ends in -${slug}.pdf`);
    for (const id of RECIPES) expect(several.print.subject).toContain(`${id}-${slug}.pdf`);
    expect(pdf.outline.map(({ title }) => title)).toEqual(demo.views.map(({ title }) => title));
  });

  it('and one to a sheet carry a code that a general decoder reads from the printed page', async () => {
    const { oneUp, several, pdf } = await madeOnce(size);
    const url = demo.views[0]?.workingUrl ?? 'none';
    const decoded = async (bytes: Uint8Array, page: number): Promise<string | undefined> => {
      const { pixels, widthPx, heightPx } = await pageImage(bytes, page, 180);
      return jsQR.default(pixels, widthPx, heightPx, { inversionAttempts: 'dontInvert' })?.data;
    };
    const [first] = oneUp;
    if (!first) throw new Error('no cards');
    // The smallest lying cards have it where the text ends.
    const linked = (await readPdf(first.bytes)).pages.findIndex(({ links }) => links[0]?.url === url);
    expect(linked).toBeGreaterThanOrEqual(0);
    expect(await decoded(first.bytes, linked + 1)).toBe(url);
    if (perSheet === 1) expect(await decoded(several.bytes, 1)).toBe(url);
    expect(pdf.pages.flatMap(({ links }) => links)).toEqual([]);
  });
});
