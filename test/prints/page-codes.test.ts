/** The codes on sheets, read as a telephone would: from the rendered page, by a general decoder. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import jsQR from 'jsqr';
import { beforeAll, describe, expect, it } from 'vitest';
import { printsOf } from '../../src/prints/catalogue.ts';
import { wallPapers } from '../../src/prints/wall/wall-paper.ts';
import { wallReferencePrint } from '../../src/prints/wall-reference.ts';
import { readContent } from '../../src/read/content.ts';
import { chartViews } from '../../src/views/chart-views.ts';
import { finishingCharts } from '../../src/views/finishing-chart.ts';
import { wallOvenDials } from '../../src/views/wall-oven-dials.ts';
import { wallWordsFor } from '../../src/wording/wall/index.ts';
import { demoOutput } from '../build/support/demo-output.ts';
import { pageImage } from '../reading-back/page-image.ts';
import { type ReadPage, readPdf } from '../reading-back/read-pdf.ts';
import { nodesWithin } from '../reading-back/structure.ts';
import { demoContent } from '../samples/demo.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { printed } from '../samples/printed.ts';
import { type Margins, sheetFaults } from './sheet-checks.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;
const SITE = 'https://dunnock-stair.example.org/';
const FOLDERS = ['tin-charts', 'bake-guides', 'finishing', 'cutting-guides', 'wall'];
const STYLES = ['', 'in-slate-and-apricot'];
/** The quick run takes two kinds in each style. */
const ALL = STYLES.flatMap((style) => FOLDERS.map((folder) => join(style, folder)));
const READ = isLong ? ALL : ALL.filter((_, index) => [1, 3, 4, 5, 7].includes(index));
/** Where a large sheet and a small one show their first modules well: about 4 dots each. */
const DOTS_PER_INCH = 180;
/** Codes stand in the upper right; the rest of a large sheet only costs time. */
const CORNER_MM = 90;
/** Nothing keeps inside these: a style whose margins are not known fails. */
const NO_MARGINS = { top: 999, right: 999, bottom: 999, left: 999 };

let output = '';
/** Of each style, by its folder. */
const margins = new Map<string, Margins>();
beforeAll(async () => {
  output = demoOutput();
  const content = await demoContent();
  margins.set('', content.houseStyle.marginMm);
  for (const { id, style } of content.houseStyles) margins.set(`in-${id}`, style.marginMm);
});

async function decoded(bytes: Uint8Array): Promise<string | undefined> {
  const { pixels, widthPx, heightPx } = await pageImage(bytes, 1, DOTS_PER_INCH, CORNER_MM);
  return jsQR.default(pixels, widthPx, heightPx, { inversionAttempts: 'dontInvert' })?.data;
}

const codesOf = ({ tree }: ReadPage): string[] =>
  (tree === null ? [] : nodesWithin(tree, 'Figure')).flatMap(({ alt }) =>
    alt?.startsWith('QR: ') ? [alt.slice('QR: '.length)] : [],
  );

/** Whole sheets; those to be joined are not for reading. In the quick run one of each kind and style. */
function sheetsIn(folder: string): string[] {
  const files = readdirSync(join(output, 'print', folder)).filter((file) => !file.includes('-on-'));
  return (isLong ? files : files.slice(0, 1)).map((file) => join(folder, file));
}

describe.each(READ)('%s', (folder) => {
  it('carry one code, on the first page, that decodes to a page of the site, and links there too', async () => {
    for (const sheet of sheetsIn(folder)) {
      const bytes = new Uint8Array(readFileSync(join(output, 'print', sheet)));
      const pdf = await readPdf(bytes);
      const { pages } = pdf;
      expect(
        sheetFaults(pdf, margins.get(folder.startsWith('in-') ? dirname(folder) : '') ?? NO_MARGINS),
      ).toEqual([]);
      const [url = 'none', ...more] = pages.flatMap(codesOf);
      if (!folder.endsWith('wall')) expect(more, sheet).toEqual([]);
      expect(await decoded(bytes), sheet).toBe(url);
      expect(pages[0]?.links.map((link) => link.url)).toContain(url);
      expect(url.startsWith(SITE)).toBe(true);
      expect(existsSync(join(output, 'site', url.slice(SITE.length))), url).toBe(true);
    }
  });
});

describe('a kitchen without a site', () => {
  it('has no code and no link on any sheet', async () => {
    const { content } = await readContent('test/kitchens/good/minimal');
    if (content === null) throw new Error('the sample kitchen is wrong');
    const { siteUrl: _, ...kitchen } = content.kitchen;
    const kinds = ['tin-chart', 'bake-guide', 'finishing-chart'] as const;
    const bare = {
      ...content,
      kitchen: { ...kitchen, paper: kitchen.paper.slice(0, 1) },
      printables: kinds.map((print) => ({ print, mass: 'g' as const })),
    };
    const fonts = sampleFonts();
    const prints = printsOf({
      content: bare,
      charts: chartViews(bare),
      finishing: finishingCharts(bare),
      style: bare.houseStyle,
      metrics: fonts.metrics,
    });
    const dials = wallOvenDials(bare.kitchen, wallWordsFor('en-GB'));
    const [paper] = wallPapers('A4');
    if (paper === undefined) throw new Error('no paper for walls');
    const firsts = FOLDERS.flatMap(
      (folder) => prints.find(({ path }) => path.startsWith(`${folder}/`)) ?? [],
    );
    const sheets = [...firsts, wallReferencePrint(dials, bare.houseStyle, fonts.metrics, paper, 'en-GB')];
    expect(sheets.length).toBeGreaterThanOrEqual(3);
    for (const print of sheets) {
      const { pages } = await readPdf(printed(print, fonts));
      expect(pages.flatMap(codesOf), print.path).toEqual([]);
      expect(
        pages.flatMap(({ links }) => links),
        print.path,
      ).toEqual([]);
    }
  });
});
