import { beforeAll, describe, expect, it } from 'vitest';
import type { HouseStyle } from '../../../src/domain/house-style.ts';
import { CARD_SIZES, type CardSize } from '../../../src/domain/printable.ts';
import type { TinChartRow, TinChartView } from '../../../src/views/tin-chart.types.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../../reading-back/read-pdf.ts';
import { nodesWithin, type ReadCell, tableRows } from '../../reading-back/structure.ts';
import { sampleStyle } from '../../samples/house-style.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';
import { cardKitchen, cardsInSize, type Kitchen } from './made-cards.ts';

const LONG = process.env.TINWRIGHT_LONG === '1';

/** Width and height, mm. A5 and A6: ISO 216, from memory; record cards in inches: common practice, no source. */
const TRIMMED: Record<CardSize, [number, number]> = {
  A5: [148, 210],
  A6: [105, 148],
  'index 3 x 5 in': [127, 76.2],
  'index 4 x 6 in': [152.4, 101.6],
  'index 5 x 8 in': [203.2, 127],
};
/** Paper around the text, mm: what cutting by hand and a thumb ask for. */
const LEAST_MARGIN_MM = 4.9;
const MARGINS = {
  top: LEAST_MARGIN_MM,
  right: LEAST_MARGIN_MM,
  bottom: LEAST_MARGIN_MM,
  left: LEAST_MARGIN_MM,
};

/** Words in a row, however lines, cards and no-break spaces divide them. */
const said = (pdf: ReadPdf): string =>
  pdf.pages
    .flatMap((page) => page.texts.filter(({ contentId }) => contentId !== null).map(({ text }) => text))
    .join('')
    .replace(/\s+/g, '');
/** Figures keep their unit by a no-break space. */
const spaced = (text: string): string => text.replace(/\s/g, ' ');
const squeezed = (text: string): string => text.replace(/\s+/g, '');

let demo: Kitchen;
beforeAll(async () => {
  // A long list of ingredients, and one with a flavour; the rest in the long run.
  const some = ['dark-chocolate-oil', 'ginger-melted'];
  demo = await cardKitchen('content', LONG ? [] : some);
});

function oneUp(kitchen: Kitchen, style: HouseStyle, size: CardSize, recipeId: string): Uint8Array {
  const views = kitchen.views.filter(({ recipe }) => recipe.id === recipeId);
  const [made] = cardsInSize(views, style, size, kitchen.content);
  if (!made?.print.path.startsWith(`recipe-cards/${recipeId}-`)) throw new Error(`no cards of ${recipeId}`);
  return made.bytes;
}

const known = new Map<string, Promise<ReadPdf>>();

/** In the demo's own style, read once for all that is asked of it. */
function readBack(size: CardSize, recipeId: string): Promise<ReadPdf> {
  const key = `${size} ${recipeId}`;
  const found = known.get(key) ?? readPdf(oneUp(demo, demo.content.houseStyle, size, recipeId));
  known.set(key, found);
  return found;
}

const faultsOf = async (bytes: Uint8Array): Promise<string[]> => [
  ...sheetFaults(await readPdf(bytes), MARGINS),
  ...pageContents(rawObjects(bytes)).flatMap(unmarkedPainting),
];

describe.each(CARD_SIZES)('cards of %s', (size) => {
  it('stand clear of their edges, nothing overlapping, 8 pt or more, all marked, in both house styles', async () => {
    const [second] = demo.content.houseStyles;
    if (!second) throw new Error('the demo has one style only');
    for (const { id } of demo.content.recipes)
      expect(sheetFaults(await readBack(size, id), MARGINS), id).toEqual([]);
    const others = LONG ? demo.content.recipes : demo.content.recipes.slice(0, 1);
    for (const { id } of others)
      expect(await faultsOf(oneUp(demo, second.style, size, id)), `${id}, second style`).toEqual([]);
  });

  it('are as large as the card and tell a printer where it is cut', async () => {
    const bytes = oneUp(demo, demo.content.houseStyle, size, 'dark-chocolate-oil');
    const pdf = await readPdf(bytes);
    const [width, height] = TRIMMED[size];
    const pages = rawObjects(bytes).filter(({ head }) => /\/Type \/Page\n/.test(head));
    expect(pages.length).toBe(pdf.pages.length);
    expect(pages.length % 2).toBe(0);
    for (const page of pdf.pages) {
      expect(page.widthMm).toBeCloseTo(width, 3);
      expect(page.heightMm).toBeCloseTo(height, 3);
    }
    const box = (head: string, name: string): number[] =>
      (new RegExp(`/${name} \\[([^\\]]+)\\]`).exec(head)?.[1] ?? '')
        .split(' ')
        .map((pt) => (Number(pt) * 25.4) / 72);
    for (const { head } of pages) {
      box(head, 'TrimBox').forEach((mm, index) => {
        expect(mm).toBeCloseTo([0, 0, width, height][index] ?? Number.NaN, 3);
        // 3 mm of bleed on every side: common practice of the trade, no source.
        const beyond = index < 2 ? mm - 3 : mm + 3;
        expect(box(head, 'BleedBox')[index]).toBeCloseTo(beyond, 3);
        expect(box(head, 'MediaBox')[index]).toBeCloseTo(beyond, 3);
      });
    }
  });

  it('say what the chart says: eggs, batter, weights and the oven of every tin they show', async () => {
    for (const { id } of demo.content.recipes) {
      const pdf = await readBack(size, id);
      const tables = tablesOf(tableRows(pdf));
      const views = demo.views.filter(({ recipe }) => recipe.id === id);
      expect(tables.length).toBe(views.length);
      const words = said(pdf);
      views.forEach((view, index) => {
        const chart = demo.charts.find((one) => one.id === view.id);
        if (!chart) throw new Error(`no chart ${view.id}`);
        expect(tables[index]?.[0]?.length).toBeGreaterThan(2);
        agreesWithChart(tables[index] ?? [], chart, words);
        expect(words).toContain(squeezed(chart.bake?.basisText ?? 'none'));
      });
    }
  });

  it('hold the whole method, once for each flavour, and every caution of the chart', async () => {
    for (const { id } of demo.content.recipes) {
      const words = said(await readBack(size, id));
      const views = demo.views.filter(({ recipe }) => recipe.id === id);
      for (const view of views) {
        for (const piece of view.method) {
          const text = piece.kind === 'heading' ? piece.text : piece.spans.map((span) => span.text).join('');
          expect(words.split(squeezed(text)).length - 1, text).toBeGreaterThanOrEqual(views.length);
        }
        for (const { text } of [...view.allergens, ...view.cautions]) expect(words).toContain(squeezed(text));
        for (const { name, text } of view.flavours) expect(words).toContain(squeezed(`${name}. ${text}`));
        expect(words).toContain(squeezed(view.readyText));
      }
    }
  });
});

/** The chart's row for a heading such as 'Six-inch round × 2 6 × 3 in': the longest name that it begins with. */
function rowHeaded(title: string, { rows }: TinChartView): TinChartRow {
  const plain = `${title.replace(/\s/g, ' ')} `;
  const named = rows.map((row) => ({
    row,
    name: row.count > 1 ? `${row.tinName} × ${row.count}` : row.tinName,
  }));
  const [found] = named
    .filter(({ name }) => plain.startsWith(`${name} `))
    .sort((a, b) => b.name.length - a.name.length);
  if (!found) throw new Error(`no tin ${title} on the chart`);
  return found.row;
}

function agreesWithChart([head = [], ...rows]: string[][], chart: TinChartView, words: string): void {
  head.slice(1).forEach((title, index) => {
    const row = rowHeaded(title, chart);
    const cells = new Map(rows.map(([label = '', ...values]) => [label, values[index] ?? '']));
    expect(cells.get('Batter')).toBe(row.batter.text);
    expect(cells.get('Fill to, mm')).toBe(row.rawFill.text);
    expect(cells.get('Eggs')?.split(' ')[0]).toBe(row.eggs?.whole.text);
    chart.columns.forEach(({ name }, at) => {
      const { figure, spoons } = row.amounts[at] ?? { figure: null, spoons: null };
      expect(cells.get(name)).toBe(spoons === null ? figure?.text : `${figure?.text} ${spoons}`);
    });
    const { bake } = row;
    if (!bake) throw new Error(`no bake figures for ${title}`);
    const times = [bake.dial.text, bake.firstLook.text, bake.expectedBy.text].map(spaced);
    const line = `${times[0]}, first look ${times[1]}, done by ${times[2]}`;
    if (cells.has('Dial')) {
      const shown = ['Dial', 'First look', 'Done by'].map((label) => spaced(cells.get(label) ?? ''));
      expect(shown).toEqual(times);
      expect(cells.get('Heating core') ?? 'none').toBe(bake.core ? 'in' : 'none');
    } else expect(words).toContain(squeezed(bake.core ? `${line}, heating core in` : line));
  });
}

/** Rows of each table of weights: its heading, then what stands below. */
function tablesOf(rows: ReadCell[][]): string[][][] {
  const tables: string[][][] = [];
  for (const row of rows) {
    const texts = row.map(({ text }) => text);
    if (texts[0]?.startsWith('Weights in')) tables.push([texts]);
    else tables.at(-1)?.push(texts);
  }
  return tables;
}

describe('a file of cards', () => {
  it('is titled, tagged and opened by its cards’ names', async () => {
    const pdf = await readBack('A6', 'ginger-melted');
    const views = demo.views.filter(({ recipe }) => recipe.id === 'ginger-melted');
    expect(views.length).toBeGreaterThan(1);
    expect(pdf.title).toBe(`${views[0]?.recipe.name}: recipe cards, A6`);
    expect(pdf.displayTitle).toBe(true);
    expect(pdf.markInfo?.Marked).toBe(true);
    expect(pdf.outline.map(({ title }) => title)).toEqual(views.map(({ title }) => title));
    expect(pdf.destinations).toEqual(expect.arrayContaining(views.map(({ id }) => id)));
    const [front] = pdf.pages;
    const code = front?.tree ? nodesWithin(front.tree, 'Figure') : [];
    expect(code.map(({ alt }) => alt)).toEqual([`QR: ${views[0]?.workingUrl}`]);
    expect(front?.links.map(({ url }) => url)).toEqual([views[0]?.workingUrl]);
    expect(front?.tree && nodesWithin(front.tree, 'H1').length).toBe(1);
  });

  it('goes on over further cards where a recipe is long', async () => {
    const small = await readBack('index 3 x 5 in', 'dark-chocolate-oil');
    const large = await readBack('A5', 'dark-chocolate-oil');
    expect(small.pages.length).toBeGreaterThan(large.pages.length);
    const numbers = small.pages.flatMap(({ texts }) => texts.filter(({ text }) => /^card \d/.test(text)));
    const cards = small.pages.length / 2;
    expect(numbers.map(({ text }) => text)).toEqual(
      small.pages.map((_, face) => `card ${Math.floor(face / 2) + 1} of ${cards}`),
    );
  });
});

describe('cards with very long names', () => {
  it('still keep everything on the card', async () => {
    const [view] = demo.views;
    if (!view) throw new Error('no cards');
    const long = 'A cake whose name goes on and on, with something of everything in it, and more besides';
    const named = { ...view, title: long, kitchenName: `The kitchen of ${long}` };
    for (const size of ['A6', 'index 3 x 5 in'] as const) {
      const [made] = cardsInSize([named], demo.content.houseStyle, size, demo.content);
      expect(made && (await faultsOf(made.bytes)), size).toEqual([]);
    }
  });
});

describe.each(['minimal', 'us', 'high'])('cards of the sample kitchen ‘%s’', (name) => {
  it('stand clear of their edges, nothing overlapping, 8 pt or more, all marked', async () => {
    const kitchen = await cardKitchen(`test/kitchens/good/${name}`);
    const sizes: readonly CardSize[] = LONG ? CARD_SIZES : ['A6', 'index 4 x 6 in'];
    const recipes = LONG ? kitchen.content.recipes : kitchen.content.recipes.slice(0, 2);
    for (const size of sizes)
      for (const { id } of recipes)
        expect(await faultsOf(oneUp(kitchen, sampleStyle, size, id)), `${id} on ${size}`).toEqual([]);
  });

  it('carry a code only when the site has an address', async () => {
    const kitchen = await cardKitchen(`test/kitchens/good/${name}`);
    const [recipe] = kitchen.content.recipes;
    const pdf = await readPdf(oneUp(kitchen, sampleStyle, 'A6', recipe?.id ?? ''));
    const links = pdf.pages.flatMap((page) => page.links);
    expect(links.length > 0).toBe(kitchen.content.kitchen.siteUrl !== undefined);
  });
});
