import { describe, expect, it } from 'vitest';
import { foldedPages, gatheringsOf, MOST_SHEETS } from '../../../src/prints/imposition/folded-pages.ts';
import type { Print, PrintPage, Surface } from '../../../src/prints/sheet/surface.ts';
import { type ReadPdf, readPdf } from '../../reading-back/read-pdf.ts';
import { nodesWithin } from '../../reading-back/structure.ts';
import { sampleFonts } from '../../samples/fonts.ts';
import { printed, smallPrint, words } from '../../samples/printed.ts';

const fonts = sampleFonts();
const PAGE = { widthMm: 60, heightMm: 80 };
const SHEET = { widthMm: 121, heightMm: 80 };
const FOLD_MM = SHEET.widthMm / 2;
const THICKNESS_MM = 0.13;
const TEXT_MM = 10;

function page(number: number): PrintPage {
  const draw = (surface: Surface, { xMm, yMm }: { xMm: number; yMm: number }) => {
    surface.within('Sect', { key: 'own' }, () =>
      surface.within('H1', {}, () => surface.text(words(`page ${number}`, xMm + TEXT_MM, yMm + 40))),
    );
    surface.bookmark('kept out', 1, { xMm, yMm });
  };
  return { ...PAGE, draw };
}

const pagesTo = (count: number): PrintPage[] => Array.from({ length: count }, (_, index) => page(index + 1));

function folded(count: number): Print {
  const pages = foldedPages(pagesTo(count), { sheet: SHEET, thicknessMm: THICKNESS_MM });
  return { ...smallPrint(), pages };
}

interface Half {
  text: string;
  xMm: number;
}

/** What stands left and right of the fold on every side, in the order of printing. */
const sidesOf = (pdf: ReadPdf): [Half, Half][] =>
  pdf.pages.map(({ texts }) => {
    const [left, right] = [...texts].sort((a, b) => a.xMm - b.xMm);
    if (!left || !right || texts.length !== 2) throw new Error('a side without two pages');
    return [left, right];
  });

describe('folded sheets, read back', async () => {
  const cases = await Promise.all(
    [4, 8, 12, 16].map(async (count) => ({ count, pdf: await readPdf(printed(folded(count), fonts)) })),
  );

  it.each(cases)('$count pages lie on the sides that folding asks for', ({ count, pdf }) => {
    const said = sidesOf(pdf).map((halves) => halves.map(({ text }) => Number(text.replace('page ', ''))));
    const asked = Array.from({ length: count / 4 }, (_, sheet) => [
      [count - 2 * sheet, 1 + 2 * sheet],
      [2 + 2 * sheet, count - 1 - 2 * sheet],
    ]).flat();
    expect(said).toEqual(asked);
  });

  it.each(cases)('$count pages creep toward the fold by a thickness a sheet', ({ pdf }) => {
    for (const [side, [left, right]] of sidesOf(pdf).entries()) {
      const creepMm = Math.floor(side / 2) * THICKNESS_MM;
      expect(left.xMm).toBeCloseTo(FOLD_MM - PAGE.widthMm + TEXT_MM + creepMm, 2);
      expect(right.xMm).toBeCloseTo(FOLD_MM + TEXT_MM - creepMm, 2);
    }
  });

  it.each(cases)('$count pages carry minimal tags and no bookmarks', ({ pdf }) => {
    expect(pdf.outline).toEqual([]);
    for (const { tree } of pdf.pages) {
      expect(tree && nodesWithin(tree, 'P')).toHaveLength(2);
      expect(tree && nodesWithin(tree, 'H1')).toEqual([]);
    }
  });

  it('come in even gatherings when a stapler would not take them all', async () => {
    const count = 4 * MOST_SHEETS + 8;
    expect(gatheringsOf(count)).toBe(2);
    const sides = sidesOf(await readPdf(printed(folded(count), fonts)));
    const half = count / 2;
    const outer = sides.filter((_, side) => side % (half / 2) === 0);
    expect(outer.map((halves) => halves.map(({ text }) => text))).toEqual([
      [`page ${half}`, 'page 1'],
      [`page ${count}`, `page ${half + 1}`],
    ]);
  });
});
