import { describe, expect, it } from 'vitest';
import type { Content } from '../../../src/domain/content.ts';
import type { Printable } from '../../../src/domain/printable.ts';
import { printsOf } from '../../../src/prints/catalogue.ts';
import type { Print } from '../../../src/prints/sheet/surface.ts';
import { wantedWallPapers } from '../../../src/prints/wall/wall-paper.ts';
import { wallReferencePrint } from '../../../src/prints/wall-reference.ts';
import { readContent } from '../../../src/read/content.ts';
import { type ChartViews, chartViews } from '../../../src/views/chart-views.ts';
import { downloadsView, filesOfChart } from '../../../src/views/downloads.ts';
import { wallInOunces } from '../../../src/views/in-ounces.ts';
import { wallReferences } from '../../../src/views/wall-references.ts';
import { downloadWordsFor } from '../../../src/wording/downloads/index.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { readPdf } from '../../reading-back/read-pdf.ts';
import { sampleFonts } from '../../samples/fonts.ts';
import { printed } from '../../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;
const fonts = sampleFonts();

async function contentOf(folder: string): Promise<Content> {
  const { content, problems } = await readContent(folder);
  if (content === null) throw new Error(JSON.stringify(problems));
  return content;
}

function wallPrintsOf(content: Content, charts: ChartViews[], ...wanted: Printable[]): Print[] {
  const printables: Printable[] = wanted.length > 0 ? wanted : [{ print: 'wall-reference', mass: 'g' }];
  const { houseStyle: style } = content;
  return printsOf({
    content: { ...content, printables },
    charts,
    finishing: [],
    style,
    metrics: fonts.metrics,
  });
}

const us = await contentOf('test/kitchens/good/us');
const usCharts = chartViews(us);

describe.each(isLong ? ['us', 'minimal', 'high'] : ['us'])('the wall of the kitchen %s', (kitchen) => {
  it('keeps inside the margins, text apart, at 8 pt or more, all of it marked', async () => {
    const content = await contentOf(`test/kitchens/good/${kitchen}`);
    const prints = wallPrintsOf(content, kitchen === 'us' ? usCharts : chartViews(content));
    const whole = prints.filter(({ path }) => !path.includes('-on-'));
    expect(whole.length).toBeGreaterThanOrEqual(4);
    for (const print of isLong ? whole : whole.filter((_, index) => index % 2 === 0)) {
      const bytes = printed(print, fonts);
      expect(sheetFaults(await readPdf(bytes), content.houseStyle.marginMm), print.path).toEqual([]);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting), print.path).toEqual([]);
    }
  });
});

describe('a plate of very many tins', () => {
  it('takes as many sheets as it needs, each tin on one of them', async () => {
    const charts = usCharts.map(({ chart }) => chart);
    const plate = wallReferences(us, charts).find(({ id }) => id === 'tin-volumes');
    if (plate?.body.form !== 'plate') throw new Error('the kitchen has no plate of its tins');
    const { tins } = plate.body;
    const many = Array.from({ length: 400 }, (_, at) => {
      const tin = tins[at % tins.length];
      if (tin === undefined) throw new Error('the kitchen has no tins');
      return { ...tin, id: `${tin.id}-${at}`, name: `Tin ${at + 1001}` };
    });
    const view = { ...plate, body: { ...plate.body, tins: many } };
    const [paper] = wantedWallPapers(['Letter'], null);
    if (paper === undefined) throw new Error('no large paper');
    const print = wallReferencePrint(view, us.houseStyle, fonts.metrics, paper, 'en-US');
    expect(print.pages.length).toBeGreaterThan(6);
    const pages = await readPdf(printed(print, fonts));
    expect(sheetFaults(pages, us.houseStyle.marginMm)).toEqual([]);
    const said = JSON.stringify(pages);
    expect(many.filter(({ name }) => !said.includes(name))).toEqual([]);
  });
});

describe('printables for the wall', () => {
  const paths = (...wanted: Printable[]): string[] =>
    wallPrintsOf(us, usCharts, ...wanted).map(({ path }) => path);

  it('are the large papers that go with the kitchen’s own, each whole and to be joined', () => {
    const [recipe] = us.recipes;
    expect(paths().filter((path) => path.includes('oven-dials'))).toEqual([
      'wall/oven-dials-11x17',
      'wall/oven-dials-11x17-on-letter',
      'wall/oven-dials-17x22',
      'wall/oven-dials-17x22-on-letter',
      'wall/oven-dials-a3',
      'wall/oven-dials-a3-on-a4',
      'wall/oven-dials-a2',
      'wall/oven-dials-a2-on-a4',
    ]);
    expect(paths()).toContain(`wall/egg-ladder-${recipe?.id}-11x17`);
  });

  it('are of the sizes asked for, whatever the kitchen’s paper, in a folder of their own', () => {
    const big = paths({ print: 'wall-reference', name: 'big', wallSizes: ['A2'], mass: 'g' });
    expect(big.length).toBeGreaterThanOrEqual(6);
    for (const path of big) expect(path).toMatch(/^wall\/big\/[a-z-]+-a2(-on-a4)?$/);
  });

  it('know only the recipes asked for', () => {
    const [recipe] = us.recipes;
    const one = paths({
      print: 'wall-reference',
      recipeIds: [recipe?.id ?? ''],
      papers: ['Letter'],
      mass: 'g',
    });
    expect(one.filter((path) => path.includes('egg-ladder'))).toEqual(
      ['11x17', '11x17-on-letter', '17x22', '17x22-on-letter'].map(
        (paper) => `wall/egg-ladder-${recipe?.id}-${paper}`,
      ),
    );
  });
});

describe('wallInOunces(view)', () => {
  const views = wallReferences(
    us,
    usCharts.map(({ chart }) => chart),
  );

  it('shows every weight in ounces, to 2 % of the same grams, and says so at the head', () => {
    for (const view of views) {
      const { body } = wallInOunces(view);
      const figures =
        body.form === 'plate'
          ? body.tins.map(({ batter }) => batter)
          : body.rows.flatMap(({ cells }) =>
              cells.flatMap(({ figure }) => (figure?.unit === 'g' ? [figure] : [])),
            );
      for (const { value, text } of figures) {
        const grams = Number(text.replaceAll(',', '')) * 28.349523125;
        expect(Math.abs(grams - value) / value, `${view.id} ${text}`).toBeLessThan(0.02);
      }
      const units = body.form === 'plate' ? [body.batterUnit] : body.columns.map(({ unit }) => unit);
      expect(units).not.toContain('g');
      if (figures.length > 0) expect(units).toContain('oz');
    }
  });

  it('leaves heat and volume alone', () => {
    const dials = views.find(({ id }) => id === 'oven-dials');
    if (dials === undefined) throw new Error('no oven dials');
    expect(wallInOunces(dials)).toEqual(dials);
  });
});

describe('the downloads', () => {
  it('name the paper of a wall reference, and the one it is joined from', () => {
    const files = ['a3', 'a3-on-a4', '17x22', '17x22-on-letter'].map((paper) => ({
      path: `print/wall/oven-dials-${paper}.pdf`,
      byteCount: 50_000,
    }));
    const [group] = downloadsView([], files, downloadWordsFor('en-GB')).groups;
    expect(group?.title).toBe('Wall references');
    expect(group?.entries.map(({ title, files: links }) => [title, links.map(({ text }) => text)])).toEqual([
      [
        'oven dials',
        ['PDF, 17 × 22 in', 'PDF, 17 × 22 in to join from US Letter', 'PDF, A3', 'PDF, A3 to join from A4'],
      ],
    ]);
    expect(filesOfChart('oven-dials', files)).toEqual([]);
  });
});
