import { beforeAll, describe, expect, it } from 'vitest';
import { portionsCsv, portionsJson, stacksCsv } from '../../src/data/portions-data.ts';
import { cuttingGuidePrint } from '../../src/prints/cutting-guide.ts';
import { portionsPage } from '../../src/site/portions-page.ts';
import { portionsView } from '../../src/views/portions.ts';
import type { PortionsView } from '../../src/views/portions.types.ts';
import { portionsWordsFor } from '../../src/wording/portions/index.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { rolesWithin, spokenText } from '../reading-back/structure.ts';
import { demoContent } from '../samples/demo.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { printed } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

const fonts = sampleFonts();
let view: PortionsView;

beforeAll(async () => {
  const content = await demoContent();
  view = portionsView(content);
});

const plain = (text: string): string => text.replace(/\s+/g, '');
const said = ({ pages }: ReadPdf): string =>
  plain(pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' '));

/** What a row of the JSON shows, in the order of the sheet. */
interface Leaf {
  about: string;
  texts: string[];
}

interface Shown {
  text: string;
}
interface PortionsJson {
  tins: {
    id: string;
    name: string;
    size: string;
    cuts: { rows: { count: Shown; whole: Shown }; rings: { count: Shown; detail: string } | null }[];
  }[];
  stacks: {
    wanted: Shown;
    choices: { text: string; portions: Shown; over: Shown; batter: Shown; eggs: string; height: Shown }[];
  }[];
}

function leaves(json: PortionsJson): Leaf[] {
  const tins = json.tins.map(({ id, name, size, cuts }) => ({
    about: id,
    texts: [
      name,
      size,
      ...cuts.flatMap(({ rows, rings }) => [
        rows.count.text,
        `${rows.whole.text} whole`,
        ...(rings === null ? ['–'] : [rings.count.text, rings.detail]),
      ]),
    ],
  }));
  const stacks = json.stacks.flatMap(({ wanted, choices }) =>
    choices.map((choice) => ({
      about: `${wanted.text} guests`,
      texts: [
        wanted.text,
        choice.text,
        choice.portions.text,
        choice.over.text,
        choice.batter.text,
        choice.eggs,
        choice.height.text,
      ],
    })),
  );
  return [...tins, ...stacks];
}

describe('the cutting guides', () => {
  it.each(['A4', 'Letter'] as const)(
    'hold every figure of the JSON on %s, without a fault',
    async (paper) => {
      const bytes = printed(cuttingGuidePrint(view, sampleStyle, fonts.metrics, paper, 'en-GB'), fonts);
      const pdf = await readPdf(bytes);
      expect([
        ...sheetFaults(pdf, sampleStyle.marginMm),
        ...pageContents(rawObjects(bytes)).flatMap(unmarkedPainting),
      ]).toEqual([]);
      const text = said(pdf);
      const all = leaves(JSON.parse(portionsJson(view)) as PortionsJson);
      const missing = all.filter(({ texts }) => !text.includes(plain(texts.join(' '))));
      expect(missing).toEqual([]);
      expect(all.flatMap(({ texts }) => texts).length).toBeGreaterThan(300);
      const roles = pdf.pages.flatMap((page) => (page.tree === null ? [] : rolesWithin(page.tree)));
      // A drawing for every tin in rows and for every round in rings, in both sizes.
      const drawings = view.rows
        .flatMap(({ cuts }) => cuts)
        .reduce((sum, { rings }) => sum + (rings ? 2 : 1), 0);
      expect(roles.filter((role) => role === 'Figure')).toHaveLength(drawings);
    },
  );

  it('draws every knife line of the view on the page and in the print', () => {
    const words = portionsWordsFor('en-GB');
    const page = portionsPage(view, [], words);
    for (const [at, guide] of page.guides.entries()) {
      for (const [row, { drawings }] of guide.cuts.entries()) {
        const svg = (drawings[0] as { svg: string }).svg;
        const knife = /class="knife" d="([^"]*)"/.exec(svg)?.[1] ?? '';
        expect(knife.match(/M/g)?.length ?? 0).toBe(view.rows[row]?.cuts[at]?.rows.lines.length);
      }
    }
  });
});

describe('portions as data', () => {
  it('says the same in CSV and JSON', () => {
    const json = JSON.parse(portionsJson(view)) as PortionsJson;
    const cuts = json.tins.flatMap(({ cuts: own }) => own).length;
    expect(portionsCsv(view).match(/\r\n/g)).toHaveLength(cuts + 1);
    const choices = json.stacks.flatMap(({ choices: own }) => own);
    const records = stacksCsv(view).split('\r\n').slice(1, -1);
    expect(records).toHaveLength(choices.length);
    for (const [at, choice] of choices.entries()) expect(records[at]).toContain(choice.portions.text);
  });

  it('reaches every number of guests, fewest over first, bottom tier widest', () => {
    for (const { wanted, choices } of view.stacks) {
      expect(choices.length).toBeGreaterThan(0);
      const over = choices.map((choice) => choice.over.value);
      expect(over).toEqual([...over].sort((a, b) => a - b));
      for (const { portions, tiers } of choices) {
        expect(portions.value).toBeGreaterThanOrEqual(wanted.value);
        const widths = tiers.map(({ id }) => view.rows.find((row) => row.id === id)?.picture.widthMm ?? 0);
        for (let at = 1; at < widths.length; at += 1)
          expect((widths[at] ?? 0) + 50).toBeLessThanOrEqual((widths[at - 1] ?? 0) + 1e-6);
      }
    }
  });
});
