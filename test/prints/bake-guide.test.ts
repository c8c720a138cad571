import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import type { HouseStyle } from '../../src/domain/house-style.ts';
import type { PaperName } from '../../src/domain/kitchen.ts';
import { bakeGuidePrint } from '../../src/prints/bake-guide.ts';
import { bakeGuideView } from '../../src/views/bake-guide.ts';
import type { BakeGuideView } from '../../src/views/bake-guide.types.ts';
import { bakesOfRecipes } from '../../src/views/chart-inputs.ts';
import { objectsLike, pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { nodesWithin, rolesWithin, spokenText, tableRows } from '../reading-back/structure.ts';
import { demoContent } from '../samples/demo.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { printed } from '../samples/printed.ts';
import { expectSameBytes } from '../samples/same-bytes.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

const fonts = sampleFonts();
const LOGGED = 'vanilla-equal-weights';
let demo: Content;
let guides: BakeGuideView[] = [];

const guidesOf = (content: Content): BakeGuideView[] =>
  [...bakesOfRecipes(content).values()].map((bakes) =>
    bakeGuideView(bakes, content.kitchen, content.altitudeM),
  );

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
  guides = guidesOf(content);
});

interface Made {
  view: BakeGuideView;
  style: HouseStyle;
  bytes: Uint8Array;
  pdf: ReadPdf;
}

async function made(view: BakeGuideView, paper: PaperName, style: HouseStyle = sampleStyle): Promise<Made> {
  const bytes = printed(bakeGuidePrint(view, style, fonts.metrics, paper, 'en-GB'), fonts);
  return { view, style, bytes, pdf: await readPdf(bytes) };
}

const named = (id: string): BakeGuideView => {
  const guide = guides.find((one) => one.id === id);
  if (guide === undefined) throw new Error(`no guide ${id}`);
  return guide;
};

/** What the print reads aloud, page after page. */
const said = ({ pages }: ReadPdf): string =>
  pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' ');

function faults({ pdf, bytes, style }: Made): string[] {
  return [...sheetFaults(pdf, style.marginMm), ...pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)];
}

/** Cells of every table of the view, in the order of the print. */
const plotCells = ({ plots }: BakeGuideView): string[][] =>
  plots.flatMap(({ table }) => [table.head, ...table.rows]);

const plain = (text: string): string => text.replace(/- /g, '-').replace(/\s+/g, ' ').trim();

/** Sentences that the page and the print both must say. */
const sentencesOf = (view: BakeGuideView): string[] =>
  [
    view.title,
    view.basisText,
    view.factorText,
    view.settingText,
    view.doneTests,
    view.pictureNote,
    ...view.plots.map(({ description }) => description),
    ...view.odd,
    ...view.fromLog,
    ...view.makeUp.sentences,
    ...view.cautions.map(({ text }) => text),
    ...(view.ask === null ? [] : [view.ask.lead, ...view.ask.bakes, view.ask.promise]),
    ...(view.log.length === 0 ? [view.logEmpty] : []),
  ].map(plain);

describe('every bake guide of the demo kitchen', () => {
  let all: Made[] = [];
  beforeAll(async () => {
    all = await Promise.all(guides.map((view) => made(view, 'A4')));
  });

  it('keeps inside the margins, overlaps nothing, is set in 8 pt or more and marks all that it paints', () => {
    for (const one of all) expect(faults(one), one.view.id).toEqual([]);
  });

  it('says every sentence and every figure of its view', () => {
    let figures = 0;
    for (const { view, pdf } of all) {
      const text = plain(said(pdf));
      expect(
        sentencesOf(view).filter((sentence) => !text.includes(sentence)),
        view.id,
      ).toEqual([]);
      const rows = tableRows(pdf).map((cells) => cells.map((cell) => plain(cell.text)));
      const wanted = plotCells(view).map((cells) => cells.map(plain));
      expect(rows.slice(0, wanted.length), view.id).toEqual(wanted);
      const logged = rows.slice(wanted.length + 1);
      view.log.forEach((bake, at) => {
        const row = (logged[at] ?? []).join(' ');
        for (const part of [
          bake.date,
          bake.tin,
          bake.how,
          bake.dial,
          bake.took,
          bake.expected,
          bake.batter,
          bake.notes,
        ])
          expect(row, `${view.id} ${bake.date}`).toContain(plain(part));
      });
      figures += wanted.flat().length + view.log.length * 6;
    }
    expect(figures).toBeGreaterThan(1000);
  });
});

describe('a guide with a log', () => {
  it('is sound on Letter and in the kitchen’s second house style, too', async () => {
    expect(faults(await made(named(LOGGED), 'Letter'))).toEqual([]);
    const [second] = demo.houseStyles;
    if (second === undefined) throw new Error('the demo has no second style');
    expect(faults(await made(named(LOGGED), 'A4', second.style))).toEqual([]);
  });

  it('is structured for reading aloud: headings, tables with scopes, a figure with words for every picture', async () => {
    const { view, bytes, pdf } = await made(named(LOGGED), 'A4');
    const roles = new Set(pdf.pages.flatMap(({ tree }) => (tree === null ? [] : rolesWithin(tree))));
    for (const role of ['Document', 'Sect', 'H1', 'H2', 'P', 'L', 'LI', 'Figure', 'Table', 'TR', 'TH', 'TD'])
      expect(roles).toContain(role);
    const alts = pdf.pages.flatMap(({ tree }) =>
      tree === null ? [] : nodesWithin(tree, 'Figure').map(({ alt }) => alt),
    );
    expect(alts).toEqual(view.plots.map(({ title, description }) => `${title}. ${description}`));
    const headings = objectsLike(rawObjects(bytes), /\/S \/TH\n/);
    expect(headings.length).toBeGreaterThan(20);
    for (const { head } of headings) expect(head).toMatch(/\/Scope \/(Row|Column)/);
    expect(pdf.displayTitle).toBe(true);
    expect(pdf.lang).toBe('en-GB');
    expect(pdf.outline.length).toBeGreaterThan(0);
  });

  it('is the same bytes every time', async () => {
    const view = named(LOGGED);
    expectSameBytes((await made(view, 'A4')).bytes, (await made(view, 'A4')).bytes);
  });
});
