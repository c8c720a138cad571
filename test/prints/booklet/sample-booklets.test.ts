/** Booklets of the sample kitchens: small ones, without flavours or finishes, in ounces, on other paper. */
import { describe, expect, it } from 'vitest';
import type { Printable } from '../../../src/domain/printable.ts';
import { chartViews } from '../../../src/views/chart-views.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';
import { contentOf, madeBooklet, viewsOf } from './support/made-booklets.ts';
import { innerLinks } from './support/places.ts';
import { contentsOf, headingsOf, wordsOn } from './support/read-booklet.ts';

const folders = ['minimal', 'high', 'us'].map((name) => `test/kitchens/good/${name}`);
const titlesOf = (pdf: Parameters<typeof headingsOf>[0]) =>
  headingsOf(pdf)
    .filter(({ level }) => level === 1)
    .map(({ text }) => text);

describe.each(folders)('the booklet of %s', async (folder) => {
  const content = await contentOf(folder);
  const [view] = viewsOf(content);
  if (!view) throw new Error('no booklet is wanted');
  const { pdf, bytes, fold, style, reading } = await madeBooklet(view, content);

  it('stays inside its margins and tags or furnishes everything', () => {
    const share = Math.min(148 / 210, 139.7 / 215.9);
    const { left, right, top, bottom } = style.marginMm;
    const outer = Math.min(left, right) * share;
    const margins = { top: top * share, right: outer, bottom: bottom * share, left: outer };
    expect(sheetFaults(pdf, margins)).toEqual([]);
    expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
  });

  it('fills folded sheets, two pages to a side', () => {
    expect(pdf.pages.length % 4).toBe(0);
    expect(fold.pages).toHaveLength(pdf.pages.length / 2);
    expect(reading.pages).toHaveLength(pdf.pages.length);
  });

  it('lists in its contents what there is, on the page where it stands, and every link arrives', async () => {
    for (const { title, page } of contentsOf(pdf))
      expect(headingsOf(pdf)).toContainEqual(expect.objectContaining({ text: title, page }));
    await expect(innerLinks(bytes)).resolves.not.toHaveLength(0);
  });

  it('is moved toward the fold by the thickness of its paper', () => {
    // The third page lies right of the fold on the second sheet's front.
    const [first] = pdf.pages[2]?.texts ?? [];
    const side = fold.pages[2];
    const foldMm = (side?.widthMm ?? 0) / 2;
    const folded = side?.texts.find(({ text, xMm }) => text === first?.text && xMm > foldMm);
    expect(view.paperThicknessMm).toBe(folder.endsWith('high') ? 0.12 : 0.1);
    expect((folded?.xMm ?? 0) - foldMm).toBeCloseTo((first?.xMm ?? 0) - view.paperThicknessMm, 2);
  });

  it('speaks the kitchen’s English, and leaves the baker’s own names alone', () => {
    const all = pdf.pages.map(wordsOn).join(' ');
    const isUs = content.kitchen.locale === 'en-US';
    expect(all).toContain(isUs ? 'find the pan in its table' : 'find the tin in its table');
    expect(all).not.toContain(isUs ? 'find the tin' : 'find the pan');
    for (const { name } of content.kitchen.tins) expect(all).toContain(name.toLowerCase());
  });

  it('has no part without anything in it', () => {
    const titles = titlesOf(pdf);
    const has = (pattern: RegExp) => titles.some((title) => pattern.test(title));
    expect(has(/^Flavou?rs$/)).toBe(content.flavours.length > 0);
    expect(has(/^Fillings and coatings$/)).toBe(content.finishes.length > 0);
    expect(wordsOn(pdf.pages[1]).includes('prepared for')).toBe(content.booklet.preparedFor !== undefined);
    expect(wordsOn(pdf.pages[1]).includes('copying')).toBe(content.booklet.licence !== undefined);
  });
});

describe('a booklet', () => {
  it('holds only the recipes, tins and finishes that its entry names, in the unit it names', async () => {
    const content = await contentOf('test/kitchens/good/high');
    const entry: Printable = { print: 'booklet', tinIds: ['square-15'], mass: 'oz' };
    const [view] = viewsOf({ ...content, printables: [entry] });
    expect(view?.tins.map(({ id }) => id)).toEqual(['square-15']);
    expect(view?.mass).toBe('oz');
    expect(view?.finishing?.tables.flatMap(({ rows }) => rows.map(({ id }) => id))).toEqual(
      expect.arrayContaining(['square-15']),
    );
    expect(view?.finishing?.tables.flatMap(({ rows }) => rows).some(({ id }) => id !== 'square-15')).toBe(
      false,
    );
    const chart = chartViews(content).find(({ chart: { flavours } }) => flavours.length === 0)?.chart;
    const row = chart?.rows.find(({ tinId }) => tinId === 'square-15');
    // One ounce is 28.349523125 g, exactly (the international pound of 1959).
    const ounces = (row?.batter.value ?? 0) / 28.349523125;
    const shown = view?.recipes[0]?.rows[0]?.batter.text ?? '';
    expect(Math.abs(Number(shown.replaceAll(',', '')) / ounces - 1)).toBeLessThan(0.02);
  });
});
