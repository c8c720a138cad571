/**
 * The booklet of the built demo, read back: its pages inside the margins, its contents and index leading where they
 * say, its figures those of the chart files, and the file to fold in the order that folding asks for. The quick run
 * reads one paper of the kitchen's own style, the long run both papers in both styles.
 * Long because all of it reads one parsed booklet.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import jsQR from 'jsqr';
import { beforeAll, describe, expect, it } from 'vitest';
import type { HouseStyle } from '../../../src/domain/house-style.ts';
import { demoOutput } from '../../build/support/demo-output.ts';
import { pageImage } from '../../reading-back/page-image.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { type ReadPdf, type ReadText, readPdf } from '../../reading-back/read-pdf.ts';
import { nodesWithin, rolesWithin, spokenText } from '../../reading-back/structure.ts';
import { demoContent } from '../../samples/demo.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';
import { type InnerLink, innerLinks } from './support/places.ts';
import { contentsOf, headingsOf, indexOf, spoken, wordsOn } from './support/read-booklet.ts';
import { toldOnPages } from './support/read-weights.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;

interface Case {
  /** Below print/: '' for the kitchen's own style. */
  folder: string;
  place: string;
  page: 'a5' | 'half-letter';
  paper: 'a4' | 'letter';
  widthMm: number;
  heightMm: number;
  sheetMm: number;
}

const A4: Omit<Case, 'folder' | 'place'> = {
  page: 'a5',
  paper: 'a4',
  widthMm: 148,
  heightMm: 210,
  sheetMm: 297,
};
const LETTER: Omit<Case, 'folder' | 'place'> = {
  page: 'half-letter',
  paper: 'letter',
  widthMm: 139.7,
  heightMm: 215.9,
  sheetMm: 279.4,
};
const CASES: Case[] = isLong
  ? ['', 'in-slate-and-apricot/'].flatMap((folder) =>
      [A4, LETTER].map((form) => ({ folder, place: `print/${folder}booklet`, ...form })),
    )
  : [{ folder: '', place: 'print/booklet', ...A4 }];

const SITE = 'https://dunnock-stair.example.org/';
/** Office paper, as the booklet takes it when the kitchen says nothing else. */
const LEAF_MM = 0.1;

interface ShownTin {
  name: string;
  count: number;
  eggs: { text: string } | null;
  shown: Record<string, string>;
  ingredients: { name: string; shown: string; spoons: string | null }[];
  bake: { dial: string; shown: Record<string, string> } | null;
}

interface ShownChart {
  id: string;
  title: string;
  tins: ShownTin[];
}

const tinName = ({ name, count }: ShownTin): string => (count > 1 ? `${count} × ${name}` : name);

describe.each(CASES)('the demo booklet on $page pages ($place)', (form) => {
  let reading: Uint8Array = new Uint8Array();
  let pdf: ReadPdf;
  let fold: ReadPdf;
  let links: InnerLink[] = [];
  let style: HouseStyle;
  let charts: ShownChart[] = [];

  beforeAll(async () => {
    const output = demoOutput();
    const file = (name: string) =>
      new Uint8Array(readFileSync(join(output, 'print', `${form.folder}booklet`, name)));
    reading = file(`to-read-${form.page}.pdf`);
    pdf = await readPdf(reading);
    fold = await readPdf(file(`to-fold-${form.paper}.pdf`));
    links = await innerLinks(reading);
    const content = await demoContent();
    style = form.folder === '' ? content.houseStyle : (content.houseStyles[0]?.style ?? content.houseStyle);
    charts = content.recipes.map(({ id }) =>
      JSON.parse(readFileSync(join(output, 'data/tin-charts', `${id}.json`), 'utf8')),
    );
  });

  const pageOfHeading = (title: string): number =>
    headingsOf(pdf).find(({ text, level }) => text === title && level < 3)?.page ?? 0;

  it('stays inside its margins, without text over text or small print', () => {
    const share = form.widthMm / (form.paper === 'a4' ? 210 : 215.9);
    const { left, right, top, bottom } = style.marginMm;
    const outer = Math.min(left, right) * share;
    const margins = { top: top * share, right: outer, bottom: bottom * share, left: outer };
    expect(sheetFaults(pdf, margins)).toEqual([]);
    expect(pageContents(rawObjects(reading)).flatMap(unmarkedPainting)).toEqual([]);
    for (const { widthMm, heightMm } of pdf.pages) {
      expect(widthMm).toBeCloseTo(form.widthMm, 2);
      expect(heightMm).toBeCloseTo(form.heightMm, 2);
    }
  });

  it('leaves the fold free on both sides', () => {
    const leastMm = 3 + Math.min(style.marginMm.left, style.marginMm.right) * 0.6;
    for (const [index, { texts, widthMm }] of pdf.pages.entries()) {
      for (const { text, xMm, widthMm: wide, sizePt } of texts) {
        const trailingMm = (text.length - text.trimEnd().length) * sizePt * 0.1;
        const toFold = index % 2 === 0 ? xMm : widthMm - xMm - wide + trailingMm;
        expect(toFold, `'${text}' on page ${index + 1}`).toBeGreaterThan(leastMm);
      }
    }
  });

  it('has headings in order, page labels, bookmarks and tagged contents', () => {
    const headings = headingsOf(pdf);
    headings.forEach(({ level, text }, at) => {
      const before = headings[at - 1];
      if (before) expect(level - before.level, text).toBeLessThanOrEqual(1);
    });
    expect(pdf.pageLabels ?? []).toEqual(pdf.pages.map((_, index) => String(index + 1)));
    const tops = headings.filter(({ level, page }) => level === 1 && page > 1).map(({ text }) => text);
    expect(pdf.outline.map(({ title }) => title)).toEqual(tops);
    const recipes = pdf.outline.find(({ title }) => title === 'Recipes')?.items.map(({ title }) => title);
    expect(recipes).toEqual(charts.map(({ title }) => title));
    const roles = new Set(pdf.pages.flatMap(({ tree }) => (tree === null ? [] : rolesWithin(tree))));
    for (const role of [
      'TOC',
      'TOCI',
      'Reference',
      'Link',
      'Table',
      'THead',
      'TBody',
      'TH',
      'TD',
      'L',
      'Figure',
    ])
      expect(roles).toContain(role);
    const heads = rawObjects(reading).filter(({ head }) => /\/S \/TH\b/.test(head));
    expect(heads.length).toBeGreaterThan(1000);
    expect(heads.filter(({ head }) => !/\/Scope \/(Row|Column)/.test(head))).toEqual([]);
  });

  it('ends no page with a heading and breaks tables well inside', () => {
    const parts = ['H1', 'H2', 'H3', 'P', 'LI', 'TR', 'TOCI'];
    // Below 'Notes' there are lines to write on.
    const ends = pdf.pages.flatMap((page) => spoken(page, parts).at(-1) ?? []);
    const headings = ends.filter(({ role, text }) => role.startsWith('H') && text !== 'Notes');
    expect(headings).toEqual([]);
    for (const [index, page] of pdf.pages.entries()) {
      for (const table of page.tree === null ? [] : nodesWithin(page.tree, 'Table')) {
        const rows = nodesWithin(table, 'TBody').flatMap((body) => nodesWithin(body, 'TR'));
        const here = rows.filter((row) => spokenText(row, page) !== '').length;
        if (here > 0 && here < rows.length) expect(here, `page ${index + 1}`).toBeGreaterThanOrEqual(4);
      }
    }
  });

  it('has contents that name the page where each heading stands, and lead there', () => {
    const lines = contentsOf(pdf);
    expect(lines.length).toBeGreaterThan(30);
    const here = pageOfHeading('Contents');
    for (const { title, page } of lines) {
      expect(
        headingsOf(pdf)
          .filter((heading) => heading.page === page)
          .map(({ text }) => text),
      ).toContain(title);
      expect(links).toContainEqual({ from: here, to: page, description: title });
    }
    const wanted = headingsOf(pdf)
      .filter(({ level, page }) => level === 1 && page > here)
      .map(({ text }) => text);
    expect(lines.map(({ title }) => title)).toEqual(expect.arrayContaining(wanted));
  });

  it('has an index whose every number leads to a page with that name', () => {
    const first = pageOfHeading('Index');
    const entries = indexOf(pdf, first);
    expect(entries.length).toBeGreaterThan(80);
    for (const { name, pages } of entries) {
      expect(pages.length, name).toBeGreaterThan(0);
      for (const page of pages)
        expect(wordsOn(pdf.pages[page - 1]), `${name}, ${page}`).toContain(name.toLowerCase());
    }
    for (const { from, to, description } of links.filter((link) => link.from >= first)) {
      const [, number] = /, (\d+)/.exec(description) ?? [];
      expect(to, `${description} on ${from}`).toBe(Number(number));
    }
  });

  it('carries codes that decode to the page of each recipe, and to the site', async () => {
    const [recipe] = charts;
    const pages = [pageOfHeading(recipe?.title ?? ''), pdf.pages.length];
    const codes = await Promise.all(
      pages.map(async (number) => {
        const { pixels, widthPx, heightPx } = await pageImage(reading, number, 200);
        return jsQR.default(pixels, widthPx, heightPx, { inversionAttempts: 'dontInvert' })?.data;
      }),
    );
    expect(codes).toEqual([`${SITE}working/${recipe?.id}.html`, SITE]);
    for (const [index, number] of pages.entries())
      expect(pdf.pages[number - 1]?.links.map(({ url }) => url)).toContain(codes[index]);
  });

  it('says in its tables what the chart files say', () => {
    let compared = 0;
    charts.forEach(({ title, tins }, at) => {
      const from = pageOfHeading(title);
      const to = pageOfHeading(charts[at + 1]?.title ?? 'Flavours');
      const told = toldOnPages(pdf.pages.slice(from - 1, to - 1), new Set(tins.map(tinName)), 'in spoons');
      for (const tin of tins) {
        const own = told.get(tinName(tin));
        const said = (what: RegExp) => [...(own ?? [])].find(([name]) => what.test(name))?.[1];
        expect(said(/^Batter\b/), `${title}, ${tinName(tin)}`).toBe(tin.shown.batter_g);
        for (const { name, shown, spoons } of tin.ingredients) {
          expect(own?.get(name), `${title}, ${tinName(tin)}, ${name}`).toBe(shown);
          expect(own?.get(`${name} in spoons`) ?? null).toBe(spoons);
        }
        const whole = said(/^(Eggs|Whites)$/);
        if (tin.eggs !== null && whole !== undefined) expect(whole).toBe(tin.shown.eggs_whole);
        else expect(tin.eggs).toBeNull();
        for (const [what, shown] of [
          [/^Fill\b/, tin.shown.raw_fill_mm],
          [/^Over\b/, tin.shown.surplus_g],
        ] as const)
          if (said(what) !== undefined) expect(said(what)).toBe(shown);
        if (tin.bake !== null && tin.count === 1) {
          expect(own?.get('Dial')).toBe(tin.bake.dial.replaceAll('\u00a0', ' '));
          expect(own?.get('First look')).toBe(tin.bake.shown.first_look?.replaceAll('\u00a0', ' '));
          expect(own?.get('Done by')).toBe(tin.bake.shown.done_by?.replaceAll('\u00a0', ' '));
        }
        compared += (own?.size ?? 0) + 1;
      }
    });
    expect(compared).toBeGreaterThan(2500);
  });

  it('never promises that a cake is free from anything', () => {
    const all = pdf.pages.map(wordsOn).join(' ');
    expect(all).not.toMatch(/(gluten|dairy|nut|egg|wheat|milk)[- ]free|free from|\bvegan\b/);
    expect(all).toContain('made without ingredients that contain');
  });

  it('is folded in order: every half of every side is the page that folding asks for', () => {
    const count = pdf.pages.length;
    expect(count % 4).toBe(0);
    expect(fold.pages).toHaveLength(count / 2);
    const gatherings = Math.ceil(count / 96);
    const each = 4 * Math.ceil(count / 4 / gatherings);
    const foldMm = form.sheetMm / 2;
    const moved = (number: number, byMm: number): ReadText[] =>
      (pdf.pages[number - 1]?.texts ?? []).map((text) => ({ ...text, xMm: text.xMm + byMm }));
    fold.pages.forEach(({ texts, widthMm, heightMm }, side) => {
      expect(widthMm).toBeCloseTo(form.sheetMm, 2);
      expect(heightMm).toBeCloseTo(form.heightMm, 2);
      const start = Math.floor((side * 2) / each) * each;
      const size = Math.min(each, count - start);
      const sheet = Math.floor((side - start / 2) / 2);
      const isBack = side % 2 === 1;
      const [left, right] = isBack
        ? [2 + 2 * sheet, size - 1 - 2 * sheet]
        : [size - 2 * sheet, 1 + 2 * sheet];
      const creepMm = sheet * LEAF_MM;
      const asked = [
        ...moved(start + left, foldMm - form.widthMm + creepMm),
        ...moved(start + right, foldMm - creepMm),
      ];
      // A reader joins runs that touch where no tag parts them: what is said and where runs begin must agree.
      const said = (all: readonly ReadText[]): string =>
        all
          .map(({ text }) => text)
          .join(' ')
          .replace(/\s+/g, ' ');
      expect(said(texts)).toBe(said(asked));
      const strayed = texts.filter(
        ({ text, xMm, yMm }) =>
          !asked.some(
            (one) =>
              text.startsWith(one.text) && Math.abs(xMm - one.xMm) < 0.01 && Math.abs(yMm - one.yMm) < 0.01,
          ),
      );
      expect(strayed, `side ${side + 1}`).toEqual([]);
    });
    expect(fold.title).toContain(`to-read-${form.page}.pdf`);
    expect(fold.outline).toEqual([]);
  });
});
