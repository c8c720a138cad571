import { beforeAll, describe, expect, it } from 'vitest';
import type { LoadedFonts } from '../../src/pdf/fonts.ts';
import { tinChartPrint } from '../../src/prints/tin-chart.ts';
import type { TinChartRow, TinChartView } from '../../src/views/tin-chart.types.ts';
import { objectsLike, pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { nodesWithin, type ReadCell, rolesWithin, tableRows } from '../reading-back/structure.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { printed } from '../samples/printed.ts';
import { expectSameBytes } from '../samples/same-bytes.ts';
import { fruitCakeChart, spongeChart } from '../samples/tin-chart-view.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

interface Made {
  view: TinChartView;
  bytes: Uint8Array;
  pdf: ReadPdf;
}

let fonts: LoadedFonts;
let sponge: Made;
let fruit: Made;

async function made(view: TinChartView, paper: 'A4' | 'Letter', siteUrl?: string): Promise<Made> {
  const options = siteUrl === undefined ? {} : { siteUrl };
  const print = tinChartPrint(view, sampleStyle, fonts.metrics, paper, 'en-GB', options);
  const bytes = printed(print, fonts);
  return { view, bytes, pdf: await readPdf(bytes) };
}

beforeAll(async () => {
  fonts = sampleFonts();
  sponge = await made(spongeChart, 'A4');
  fruit = await made(fruitCakeChart, 'A4');
});

const withSpoons = ({ figure, spoons }: TinChartRow['amounts'][number]): string =>
  spoons === null ? figure.text : `${figure.text} ${spoons}`;

/** Figures of a row as they must stand in its cells, after the tin's name and before the words. */
const figureCells = (row: TinChartRow): string[] => [
  `${row.eggs?.whole.text} ${row.eggs?.exact.text}`,
  row.batter.text,
  ...row.amounts.map(withSpoons),
];

const texts = (cells: ReadCell[]): string[] => cells.map(({ text }) => text);

describe('a chart of five ingredients', () => {
  it('is one table: every cell says what the view says', () => {
    const rows = tableRows(sponge.pdf).filter((cells) => cells[0]?.role === 'TH');
    const start = 1;
    spongeChart.rows.forEach((row, index) => {
      const cells = rows[start + index] ?? [];
      expect(texts(cells).slice(1, -1)).toEqual(figureCells(row));
      expect(cells[0]?.text).toContain(row.tinName);
      expect(cells[0]?.text).toContain(row.sizeText);
      expect(cells[0]?.text).toContain(row.otherSizeText);
      const words = cells.at(-1)?.text ?? '';
      for (const figure of [row.rawFill, row.rawFillShare, row.volume]) expect(words).toContain(figure.text);
      expect(words).toContain(`${row.receives.text} g in ${row.count > 1 ? 'each' : 'the tin'}.`);
      expect(words).toContain(row.surplusText);
      for (const warning of row.warnings) expect(words).toContain(warning.message.slice(1));
    });
  });

  it('heads its columns once for reading aloud, and again by eye on every page of rows', () => {
    const headings = ['Tin', 'Eggs exact', 'Batter g', ...spongeChart.columns.map(({ name }) => `${name} g`)];
    const heads = tableRows(sponge.pdf).filter((cells) => cells[0]?.text === 'Tin');
    expect(heads).toHaveLength(1);
    expect(texts(heads[0] ?? []).slice(0, -1)).toEqual(headings);
    const sizes = spongeChart.rows.map(({ sizeText }) => sizeText);
    const withRows = sponge.pdf.pages.filter((page) =>
      page.texts.some(({ text }) => sizes.some((size) => text.startsWith(size))),
    );
    expect(withRows.length).toBeGreaterThan(1);
    for (const page of withRows) expect(page.texts.filter(({ text }) => text === 'Tin')).toHaveLength(1);
  });

  it('leaves no row alone on a page', () => {
    const names = new Set(spongeChart.rows.map(({ sizeText }) => sizeText));
    for (const page of sponge.pdf.pages) {
      const rows = page.texts.filter(({ text }) => [...names].some((name) => text.startsWith(name))).length;
      expect(rows).not.toBe(1);
    }
  });

  it('sets eggs and batter in 14 pt or more, ingredients in 10 pt or more', () => {
    const sizeOf = (wanted: string) =>
      sponge.pdf.pages.flatMap((page) => page.texts).filter(({ text }) => text === wanted);
    for (const row of spongeChart.rows) {
      expect(sizeOf(row.batter.text).some(({ sizePt }) => sizePt >= 14)).toBe(true);
      for (const { figure } of row.amounts)
        expect(sizeOf(figure.text).some(({ sizePt }) => sizePt >= 10)).toBe(true);
    }
  });

  it('aligns the digits of a column on the point', () => {
    const powder = spongeChart.rows.map((row) => row.amounts[3]?.figure.text ?? '');
    const points = sponge.pdf.pages
      .slice(0, 3)
      .flatMap((page) =>
        page.texts
          .filter(
            ({ text, sizePt }) => powder.includes(text) && /\./.test(text) && Math.abs(sizePt - 11.5) < 0.01,
          )
          .map(({ text, xMm }) => xMm + fonts.metrics.widthMm(text.split('.')[0] ?? '', 'text', 11.5, true)),
      );
    expect(points.length).toBeGreaterThan(5);
    expect(Math.max(...points) - Math.min(...points)).toBeLessThan(0.05);
  });

  it('links its code and each row to their working only where the kitchen has a site', async () => {
    expect(sponge.pdf.pages.flatMap((page) => page.links)).toEqual([]);
    for (const site of ['https://cakes.example.org/shop', 'https://cakes.example.org/shop/']) {
      const linked = await made(spongeChart, 'A4', site);
      const working = 'https://cakes.example.org/shop/working/vanilla-sponge.html';
      expect(linked.pdf.pages.flatMap((page) => page.links.map(({ url }) => url))).toEqual([
        working,
        ...spongeChart.rows.map(({ id }) => `${working}#${id}`),
      ]);
    }
  });
});

describe('a chart of eleven ingredients', () => {
  it('gives each tin a block with all its figures', () => {
    const rows = tableRows(fruit.pdf);
    const { columns } = fruitCakeChart;
    fruitCakeChart.rows.forEach((row, index) => {
      const block = rows.slice(index * columns.length, (index + 1) * columns.length).map(texts);
      const wanted = row.amounts.map(({ figure, spoons }, place) => [
        columns[place]?.name,
        [figure.text, 'g', spoons].filter((part) => part !== null).join(' '),
      ]);
      expect(block).toEqual(wanted);
    });
    const said = fruit.pdf.pages.flatMap((page) => page.texts.map(({ text }) => text.trim()));
    for (const { batter, eggs } of fruitCakeChart.rows) {
      expect(said).toContain(batter.text);
      expect(said).toContain(`Eggs, exactly ${eggs?.exact.text}`);
    }
  });

  it('turns the ladder: a row per ingredient, a column per number of eggs', () => {
    const { ladder } = fruitCakeChart;
    const brandy = tableRows(fruit.pdf).filter((cells) => cells[0]?.text === 'Brandy, g');
    expect(brandy.flatMap((cells) => texts(cells).slice(1))).toEqual(
      ladder?.rungs.map((rung) => rung.amounts[10]?.figure.text),
    );
  });
});

describe.each([
  ['A4', 'lengthwise', spongeChart, 297, 210],
  ['Letter', 'lengthwise', spongeChart, 279.4, 215.9],
  ['A4', 'upright', fruitCakeChart, 210, 297],
  ['Letter', 'upright', fruitCakeChart, 215.9, 279.4],
] as const)('on %s, %s', (paper, _, view, widthMm, heightMm) => {
  let chart: Made;
  beforeAll(async () => {
    chart = await made(view, paper);
  });

  it('has the size of the paper', () => {
    for (const page of chart.pdf.pages) {
      expect(page.widthMm).toBeCloseTo(widthMm, 2);
      expect(page.heightMm).toBeCloseTo(heightMm, 2);
    }
  });

  it('keeps all text inside the margins, apart, and at 8 pt or more', () => {
    expect(sheetFaults(chart.pdf, sampleStyle.marginMm)).toEqual([]);
  });

  it('carries the whole egg ladder', () => {
    const said = chart.pdf.pages.map((page) => page.texts.map(({ text }) => text.trim()).join(' ')).join(' ');
    for (const rung of view.ladder?.rungs ?? []) {
      expect(said).toContain(rung.batter.text);
      for (const fill of rung.fills) expect(said).toContain(`${fill.text}, ${fill.left.text} g left`);
    }
  });

  it('says notes and cautions with their word', () => {
    const said = chart.pdf.pages
      .map((page) => page.texts.map(({ text }) => text.trim()).join(' '))
      .join(' ')
      .replace(/\s+/g, ' ');
    for (const note of view.notes) expect(said).toContain(note);
    for (const caution of view.cautions) expect(said).toContain(`Caution. ${caution.text}`);
  });

  it('marks all that it paints, as content or as furniture', () => {
    const contents = pageContents(rawObjects(chart.bytes));
    expect(contents).toHaveLength(chart.pdf.pages.length);
    expect(contents.flatMap(unmarkedPainting)).toEqual([]);
  });

  it('is structured for reading aloud', () => {
    const roles = chart.pdf.pages.flatMap((page) => (page.tree === null ? [] : rolesWithin(page.tree)));
    for (const role of [
      'Document',
      'Sect',
      'H1',
      'H2',
      'P',
      'L',
      'LI',
      'Lbl',
      'LBody',
      'Table',
      'TR',
      'TH',
      'TD',
    ])
      expect(roles).toContain(role);
    const objects = rawObjects(chart.bytes);
    const headings = objectsLike(objects, /\/S \/TH\n/);
    expect(headings.length).toBeGreaterThan(20);
    for (const { head } of headings) expect(head).toMatch(/\/Scope \/(Row|Column)/);
    const figures = objectsLike(objects, /\/S \/Figure\n/);
    expect(figures).toHaveLength(view.rows.length);
    for (const { head } of figures) expect(head).toMatch(/\/Alt \([\s\S]+\/BBox \[/);
    const alts = chart.pdf.pages.flatMap((page) =>
      page.tree === null ? [] : nodesWithin(page.tree, 'Figure').map(({ alt }) => alt),
    );
    for (const { picture } of view.rows) expect(alts).toContain(picture.alt);
  });

  it('has bookmarks, page labels and a place for every row', () => {
    const titles = chart.pdf.outline.flatMap(({ title, items }) => [
      title,
      ...items.map((item) => item.title),
    ]);
    for (const title of ['Tins and weights', 'Egg ladder', 'How to read this chart'])
      expect(titles).toContain(title);
    expect(chart.pdf.pageLabels?.[0]).toBe('1');
    expect(chart.pdf.destinations).toEqual(expect.arrayContaining(view.rows.map(({ id }) => id)));
  });

  it('numbers its pages and names the kitchen on each', () => {
    chart.pdf.pages.forEach((page, index) => {
      const said = page.texts.map(({ text }) => text.trim());
      expect(said).toContain(`Page ${index + 1} of ${chart.pdf.pages.length}`);
      expect(said).toContain(view.kitchenName);
    });
  });

  it('is the same bytes every time', async () => {
    expectSameBytes((await made(view, paper)).bytes, chart.bytes);
  });
});

describe('a chart without eggs', () => {
  it('has no egg column, no egg facts and no ladder', async () => {
    const rows = spongeChart.rows.map((row) => ({ ...row, eggs: null }));
    const { pdf } = await made({ ...spongeChart, rows, ladder: null }, 'A4');
    const said = pdf.pages.flatMap((page) => page.texts.map(({ text }) => text.trim()));
    expect(said).not.toContain('Eggs');
    expect(said).not.toContain('Egg ladder');
    expect(sheetFaults(pdf, sampleStyle.marginMm)).toEqual([]);
  });
});
