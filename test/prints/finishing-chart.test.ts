import { beforeAll, describe, expect, it } from 'vitest';
import { finishingChartData } from '../../src/data/finishing-chart-data.ts';
import type { Content } from '../../src/domain/content.ts';
import type { HouseStyle } from '../../src/domain/house-style.ts';
import type { PaperName } from '../../src/domain/kitchen.ts';
import { printsOfKind } from '../../src/prints/catalogue.ts';
import { finishingChartPrint } from '../../src/prints/finishing-chart.ts';
import { finishingCharts, finishingChartView } from '../../src/views/finishing-chart.ts';
import type { FinishingChartView } from '../../src/views/finishing-chart.types.ts';
import { objectsLike, pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { rolesWithin, spokenText, tableRows } from '../reading-back/structure.ts';
import { readDemo } from '../samples/demo.ts';
import { fontsOf } from '../samples/fonts.ts';
import { printed } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

interface Made {
  bytes: Uint8Array;
  pdf: ReadPdf;
}

/** Amounts as the data file gives them; only what these checks ask of it. */
interface Data {
  cautions: { text: string }[];
  left_out: { text: string }[];
  tins: {
    name: string;
    size: string;
    shown: Record<string, string>;
    amounts: {
      finish_name: string;
      use_text: string;
      shown: Record<string, string>;
      sheet: { text: string } | null;
    }[];
  }[];
}

let content: Content;
let view: FinishingChartView;
let data: Data;
let onA4: Made;

async function made(style: HouseStyle, paper: PaperName): Promise<Made> {
  const fonts = fontsOf(style);
  const { siteUrl } = content.kitchen;
  const options = siteUrl === undefined ? {} : { siteUrl };
  const print = finishingChartPrint(view, style, fonts.metrics, paper, 'en-GB', options);
  const bytes = printed(print, fonts);
  return { bytes, pdf: await readPdf(bytes) };
}

beforeAll(async () => {
  const read = await readDemo();
  if (read.content === null) throw new Error('the demo content is wrong');
  content = read.content;
  view = finishingChartView(content);
  data = JSON.parse(JSON.stringify(finishingChartData(view)));
  onA4 = await made(content.houseStyle, 'A4');
});

const faults = ({ bytes, pdf }: Made, { marginMm }: HouseStyle): string[] => [
  ...sheetFaults(pdf, marginMm),
  ...pageContents(rawObjects(bytes)).flatMap(unmarkedPainting),
];

/** By tin and by finish with its use: what the print's cell says. */
function cellsOf(pdf: ReadPdf): Map<string, string> {
  const cells = new Map<string, string>();
  let heads: string[] = [];
  for (const row of tableRows(pdf)) {
    const texts = row.map(({ text }) => text);
    if (texts[0] === 'Tin') heads = texts;
    else for (const [index, text] of texts.entries()) cells.set(`${texts[0]} | ${heads[index]}`, text);
  }
  return cells;
}

describe('the finishing chart of the demo on paper', () => {
  it('keeps inside the margins, overlaps nothing, is set in 8 pt or more and marks all that it paints', async () => {
    expect(faults(onA4, content.houseStyle)).toEqual([]);
    if (process.env.TINWRIGHT_LONG === '1')
      expect(faults(await made(content.houseStyle, 'Letter'), content.houseStyle)).toEqual([]);
  });

  it('does so in the second house style', async () => {
    const [second] = content.houseStyles;
    if (!second) throw new Error('the demo has one style only');
    expect(faults(await made(second.style, 'A4'), second.style)).toEqual([]);
  });

  it('parts no heading from its table, on the smaller paper and with the wider margins too', () => {
    const pagesOn = (style: HouseStyle, paper: PaperName) =>
      finishingChartPrint(view, style, fontsOf(style).metrics, paper, 'en-GB').pages.length;
    const withTable = onA4.pdf.pages.map(({ tree }) => tree !== null && rolesWithin(tree).includes('Table'));
    expect(withTable.slice(withTable.indexOf(true))).not.toContain(false);
    for (const { style } of content.houseStyles)
      for (const paper of ['A4', 'Letter'] as const)
        expect(pagesOn(style, paper), paper).toBe(onA4.pdf.pages.length);
  });

  it('says every amount that the data file shows, under its tin and its finish', () => {
    const cells = cellsOf(onA4.pdf);
    let figures = 0;
    for (const tin of data.tins)
      for (const { finish_name: finish, use_text: use, shown, sheet } of tin.amounts) {
        const cell = cells.get(`${tin.name} ${tin.size} | ${finish} ${use}`);
        const below = sheet === null ? shown.needed_g : sheet.text;
        const buy = shown.buy_g === undefined ? '' : `, buy ${shown.buy_g}`;
        expect(cell, `${tin.name}, ${finish}`).toBe(`${shown.make_g} ${below}${buy}`);
        figures += 2;
      }
    // Nineteen tins, eighteen finishes and uses, two figures each.
    expect(figures).toBeGreaterThan(600);
  });

  it('says board, box, ribbon and height of every coated cake as the data file does', () => {
    const cells = cellsOf(onA4.pdf);
    for (const { name, size, shown } of data.tins) {
      const under = (head: string) => cells.get(`${name} ${size} | ${head}`);
      expect(under('Coated cake')).toBe(`${shown.coated_across_mm} across ${shown.coated_height_mm} high`);
      expect(under('Board')).toBe(shown.board_mm);
      expect(under('Box')).toBe(`${shown.box_side_mm} ${shown.box_height_mm} high`);
      expect(under('Ribbon')).toBe(shown.ribbon_mm);
    }
  });

  it('gives every caution, and every tin that is left out with its reason', () => {
    const said = onA4.pdf.pages.map((page) => (page.tree ? spokenText(page.tree, page) : '')).join(' ');
    expect(data.cautions.length).toBeGreaterThan(0);
    for (const { text } of [...data.cautions, ...data.left_out])
      expect(said).toContain(text.replace(/- /g, '-').replace(/\s+/g, ' '));
  });

  it('is structured for reading aloud: title, headings, lists, tables whose headers say what they speak for', () => {
    const { bytes, pdf } = onA4;
    expect(pdf.title).toBe(`${view.title} – ${view.kitchenName}`);
    expect(pdf.lang).toBe('en-GB');
    const roles = new Set(pdf.pages.flatMap(({ tree }) => (tree ? rolesWithin(tree) : [])));
    for (const role of ['H1', 'H2', 'L', 'LI', 'Table', 'THead', 'TR', 'TH', 'TD', 'Figure'])
      expect(roles).toContain(role);
    const headers = objectsLike(rawObjects(bytes), /\/S \/TH\n/);
    expect(headers.length).toBeGreaterThan(data.tins.length);
    for (const { head } of headers) expect(head).toMatch(/\/Scope \/(Row|Column)/);
    expect(pdf.outline.map(({ title }) => title)).toEqual([view.title]);
    expect(pdf.outline[0]?.items.length).toBeGreaterThan(5);
  });
});

describe('an entry of printables', () => {
  it('that names tins and finishes gets a chart of just these', async () => {
    const style = content.houseStyle;
    const fonts = fontsOf(style);
    const entry = {
      print: 'finishing-chart' as const,
      name: 'two-tins',
      tinIds: ['round-6', 'square-8'],
      finishIds: ['sugarpaste'],
      papers: ['A4' as const],
      mass: 'g' as const,
    };
    const asked = { ...content, printables: [entry] };
    const source = { content: asked, charts: [], finishing: finishingCharts(asked), style };
    const prints = printsOfKind({ ...source, metrics: fonts.metrics }, 'finishing-chart');
    expect(prints.map(({ path }) => path)).toEqual(['finishing/two-tins/finishing-a4']);
    const [print] = prints;
    if (print === undefined) throw new Error('no print');
    const said = (await readPdf(printed(print, fonts))).pages
      .flatMap(({ texts }) => texts.map(({ text }) => text))
      .join(' ');
    expect(said).toContain('Eight-inch square');
    expect(said).not.toContain('Ten-inch round');
    expect(said).not.toContain('Vanilla buttercream');
  });
});
