/** Stack sheets and support templates read back from their PDF. Long because both read the same few stacks. */
import { beforeAll, describe, expect, it } from 'vitest';
import { viewJson } from '../../src/data/view-json.ts';
import { sheetContext } from '../../src/prints/sheet/sheet-context.ts';
import { type StackedOrder, stackSheetPrint } from '../../src/prints/stack-sheet.ts';
import { supportTemplatePrint, supportTemplateView } from '../../src/prints/support-template.ts';
import { templateLayout } from '../../src/prints/templates/lay-out.ts';
import type { StackView } from '../../src/views/stack-sheet.types.ts';
import { templateLabelsFor } from '../../src/wording/lining-template/sheet-words.ts';
import { enGbStacks } from '../../src/wording/stacks/en-gb.ts';
import type { StackCaution } from '../../src/wording/stacks/index.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { rolesWithin, spokenText } from '../reading-back/structure.ts';
import { fontsOf, sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { printed } from '../samples/printed.ts';
import { type StackedDemo, stackedDemo } from '../views/support/stacked-order.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';
import { type ReadStroke, readStrokes } from './templates/support/path-operators.ts';

const ALLOWED_MM = 0.2;
const TEMPLATE_MARGIN = { top: 8, right: 8, bottom: 8, left: 8 };
const fonts = sampleFonts();
let demo: StackedDemo;
let byHand: StackedOrder;

function stackedOrder(stack: StackView, title: string): StackedOrder {
  const { kitchen } = demo.content;
  return {
    id: 'a-stack',
    title,
    reference: 'R-1',
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    stack,
  };
}

beforeAll(async () => {
  demo = await stackedDemo();
  byHand = stackedOrder(demo.viewOf(demo.byHand()), 'Three tiers by hand');
});

const plain = (text: string): string => text.replace(/\s+/g, '');
const said = ({ pages }: ReadPdf): string =>
  plain(pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' '));

interface Shown {
  text: string;
}
interface StackJson {
  summary: string;
  facts: { text: string }[];
  tiers: (Record<'across' | 'deep' | 'height' | 'weight', Shown> & {
    name: string;
    tin: { name: string };
    carries: Shown | null;
    stands_on_text: string;
  })[];
  sets: {
    title: string;
    set_text: string;
    spots: Record<'number' | 'clock' | 'from_middle' | 'side' | 'depth' | 'from_edge', Shown>[];
  }[];
  steps: string[];
  cautions: { text: string }[];
  warnings: { message: string }[];
}

/** What the JSON says, in the order in which the sheet's rows say it. */
function rowsOf({ tiers, sets, facts, steps, cautions, warnings, summary }: StackJson): string[] {
  const across = ({ across: wide, deep }: StackJson['tiers'][number]): string =>
    wide.text === deep.text ? wide.text : `${wide.text} × ${deep.text}`;
  return [
    summary,
    ...facts.map(({ text }) => text),
    ...tiers.map((tier) =>
      [
        ...[tier.name, tier.tin.name, `${across(tier)} × ${tier.height.text}`, tier.weight.text],
        ...[tier.carries?.text ?? '–', tier.stands_on_text],
      ].join(' '),
    ),
    ...sets.flatMap(({ title, set_text, spots }) => [
      title,
      set_text,
      ...spots.map(({ number, clock, from_middle, side, depth, from_edge }) =>
        [number, clock, from_middle, side, depth, from_edge].map(({ text }) => text).join(' '),
      ),
    ]),
    ...steps,
    ...cautions.map(({ text }) => text),
    ...warnings.map(({ message }) => message),
  ];
}

describe('the stack sheet', () => {
  const stacks = (): [string, StackView][] => {
    const { viewOf, byHand: of } = demo;
    const round = demo.content.kitchen.tins.find(({ id }) => id === 'round-8');
    const square = { kind: 'square', sideMm: 152.4 } as const;
    if (round === undefined) throw new Error('no round-8');
    return [
      ['by hand', byHand.stack],
      ['with a tall tier', viewOf(of([{ coatedHeightMm: 160, builtHeightMm: 150 }]))],
      ['with corners reaching over', viewOf(of([{}, {}, { tin: { ...round, shape: square } }]))],
      ...demo.orders.flatMap((planned): [string, StackView][] =>
        planned.order.arrangement === 'stacked' ? [[planned.order.id, viewOf(planned)]] : [],
      ),
    ];
  };

  it.each(['A4', 'Letter'] as const)(
    'holds every figure of the JSON on %s, without a fault',
    async (paper) => {
      for (const [name, stack] of paper === 'A4' ? stacks() : stacks().slice(0, 1)) {
        const order = stackedOrder(stack, name);
        const bytes = printed(stackSheetPrint(order, sampleStyle, fonts.metrics, paper, 'en-GB'), fonts);
        const pdf = await readPdf(bytes);
        expect([
          ...sheetFaults(pdf, sampleStyle.marginMm),
          ...pageContents(rawObjects(bytes)).flatMap(unmarkedPainting),
        ]).toEqual([]);
        const text = said(pdf);
        const rows = rowsOf(JSON.parse(viewJson(stack)) as StackJson);
        expect(
          rows.filter((row) => !text.includes(plain(row))),
          name,
        ).toEqual([]);
        expect(rows.length).toBeGreaterThan(20);
        const roles = pdf.pages.flatMap((page) => (page.tree === null ? [] : rolesWithin(page.tree)));
        expect(roles.filter((role) => role === 'Figure')).toHaveLength(1);
      }
    },
  );

  it('prints every caution there is, whichever a stack has', async () => {
    const { cautions } = enGbStacks;
    const codes = Object.keys(cautions) as StackCaution[];
    const all = codes.map((code) => ({ code, text: `About ${code}.` }));
    const order = stackedOrder({ ...byHand.stack, cautions: all }, 'Every caution');
    const text = said(
      await readPdf(printed(stackSheetPrint(order, sampleStyle, fonts.metrics, 'A4', 'en-GB'), fonts)),
    );
    expect(all.filter((one) => !text.includes(plain(one.text)))).toEqual([]);
  });

  it('is one spread for the orders of the demo, in every house style of the kitchen', () => {
    for (const { style } of [{ style: sampleStyle }, ...demo.content.houseStyles]) {
      const { metrics } = fontsOf(style);
      for (const [name, stack] of stacks().slice(-2))
        expect(stackSheetPrint(stackedOrder(stack, name), style, metrics, 'A4', 'en-GB').pages).toHaveLength(
          2,
        );
    }
  });

  it('leads to its order where orders are published', async () => {
    const options = { siteUrl: 'https://cakes.example.org/' };
    const print = stackSheetPrint(byHand, sampleStyle, fonts.metrics, 'A4', 'en-GB', options);
    const plainPrint = stackSheetPrint(byHand, sampleStyle, fonts.metrics, 'A4', 'en-GB');
    expect(said(await readPdf(printed(print, fonts)))).toContain('Thisorderonscreen');
    expect(said(await readPdf(printed(plainPrint, fonts)))).not.toContain('Thisorderonscreen');
  });
});

describe.each(['A4', 'Letter'] as const)(
  'the support template on %s, measured by its path operators',
  (paper) => {
    interface Measured {
      id: string;
      /** Outlines and circles in mm about the middle of the piece, y up. */
      cut: { x: number; y: number }[];
      circles: { x: number; y: number; acrossMm: number }[];
    }

    const isCircle = (path: ReadStroke['subpaths'][number]): boolean => path.length > 40;

    function measured(order: StackedOrder): Measured[] {
      const context = sheetContext(sampleStyle, fonts.metrics);
      const print = supportTemplatePrint(order, sampleStyle, fonts.metrics, paper, 'en-GB');
      const layout = templateLayout(
        supportTemplateView(order, 'en-GB'),
        paper,
        templateLabelsFor('en-GB'),
        context,
      );
      const pages = pageContents(rawObjects(printed(print, fonts))).map(readStrokes);
      expect(pages).toHaveLength(layout.sheets.length);
      return layout.sheets.flatMap(({ items }, at) =>
        items.map(({ item: { laid, part }, xMm, yMm }): Measured => {
          const { window } = part;
          const inPart = ({ x, y }: { x: number; y: number }) =>
            x > xMm - 2 &&
            x < xMm + window.maxX - window.minX + 2 &&
            y > yMm - 2 &&
            y < yMm + window.maxY - window.minY + 2;
          const centred = ({ x, y }: { x: number; y: number }) => {
            const [right, down] = [x - xMm + window.minX, y - yMm + window.minY];
            // A piece laid a quarter turn clockwise is turned back.
            return laid.turned ? { x: down, y: right } : { x: right, y: -down };
          };
          const paths = (pages[at] ?? []).flatMap(({ lineWidthPt, dashed, subpaths }) =>
            dashed
              ? []
              : subpaths.filter((path) => path.every(inPart)).map((path) => ({ lineWidthPt, path })),
          );
          const circles = paths.flatMap(({ lineWidthPt, path }) => {
            if (lineWidthPt !== 0.5 || !isCircle(path)) return [];
            const spots = path.map(centred);
            const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
            const [left, right] = [Math.min(...xs), Math.max(...xs)];
            return [
              { x: (left + right) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2, acrossMm: right - left },
            ];
          });
          const cut = paths.flatMap(({ lineWidthPt, path }) =>
            lineWidthPt === 0.75 ? path.map(centred) : [],
          );
          return { id: laid.piece.id, cut, circles };
        }),
      );
    }

    it('has the outline of the tier above, and every circle where the JSON says, within 0.2 mm', () => {
      const parts = measured(byHand);
      // The tier above is 8 in across, then 6 in, with 10 mm of coats all round; the dowel has a hole of 12 mm in both.
      for (const [id, radiusMm] of [
        ['tier-1-top', 111.6],
        ['tier-2-top', 86.2],
      ] as const) {
        const own = parts.filter((part) => part.id === id);
        const cut = own.flatMap((part) => part.cut);
        expect(cut.length).toBeGreaterThan(50);
        for (const { x, y } of cut) expect(Math.abs(Math.hypot(x, y) - radiusMm)).toBeLessThan(ALLOWED_MM);
        const circles = own.flatMap((part) => part.circles);
        const spots = byHand.stack.sets.find((set) => set.id === id)?.spots ?? [];
        expect(spots).toHaveLength(4);
        for (const { side, depth } of spots) {
          const near = circles.filter(({ x, y }) => Math.hypot(x - side.value, y - depth.value) < ALLOWED_MM);
          expect(near.length).toBeGreaterThan(0);
          for (const { acrossMm } of near) expect(Math.abs(acrossMm - 10)).toBeLessThan(ALLOWED_MM);
        }
        const holes = circles.filter(({ x, y }) => Math.hypot(x, y) < ALLOWED_MM);
        expect(holes.length).toBeGreaterThan(0);
        for (const { acrossMm } of holes) expect(Math.abs(acrossMm - 12)).toBeLessThan(ALLOWED_MM);
      }
    });

    it('has the bare cake dashed within it, and says how wide supports may be, how long and where they are cut', async () => {
      const [bottom] = byHand.stack.sets;
      const bare = bottom?.picture.guides.find(({ kind }) => kind === 'cake');
      expect(bare?.text).toBe('Before its coats: 203.2\u00a0mm across');
      const spots = (bare?.steps ?? []).flatMap((step) => (step.op === 'close' ? [] : [step]));
      expect(spots.length).toBeGreaterThan(3);
      for (const { x, y } of spots) expect(Math.abs(Math.hypot(x, y) - 101.6)).toBeLessThan(ALLOWED_MM);
      const print = supportTemplatePrint(byHand, sampleStyle, fonts.metrics, paper, 'en-GB');
      const bytes = printed(print, fonts);
      expect(
        pageContents(rawObjects(bytes))
          .flatMap(readStrokes)
          .some(({ dashed }) => dashed),
      ).toBe(true);
      const text = plain(
        (await readPdf(bytes)).pages.flatMap(({ texts }) => texts.map((run) => run.text)).join(' '),
      );
      for (const words of [
        '110 mm long',
        '100 mm long',
        'level with the top',
        '10 mm across, for supports of 6 to 12',
      ])
        expect(text).toContain(plain(words));
    });

    it('sets words that find no room on a small outline below it, about as wide as it', () => {
      const planned = demo.orders.find(({ order }) => order.id === 'square-and-round');
      if (planned === undefined) throw new Error('no square and round');
      const own = supportTemplateView(stackedOrder(demo.viewOf(planned), 'Small'), 'en-GB');
      const context = sheetContext(sampleStyle, fonts.metrics);
      const { sheets } = templateLayout(own, paper, templateLabelsFor('en-GB'), context);
      const below = sheets
        .flatMap(({ items }) => items)
        .flatMap(({ item: { drawing } }) => drawing.beside ?? []);
      // A tier of four inches.
      expect(below).toHaveLength(1);
      expect(below[0]?.widthMm).toBeGreaterThan(60);
      expect(below[0]?.heightMm).toBeLessThan(40);
    });

    it('carries a bar of 100 mm, the word to print at 100 % and the caution on every sheet', async () => {
      const bytes = printed(supportTemplatePrint(byHand, sampleStyle, fonts.metrics, paper, 'en-GB'), fonts);
      for (const page of pageContents(rawObjects(bytes))) {
        const bars = readStrokes(page)
          .flatMap(({ subpaths }) => subpaths)
          .filter(([a, b]) => a && b && a.y === b.y && Math.abs(b.x - a.x - 100) < 0.005);
        expect(bars).toHaveLength(1);
      }
      const pdf = await readPdf(bytes);
      expect(sheetFaults(pdf, TEMPLATE_MARGIN)).toEqual([]);
      for (const { texts } of pdf.pages) {
        const text = texts.map((run) => run.text).join(' ');
        expect(text).toContain('Print at 100 %, no scaling');
        expect(text).toContain('Not food safe');
      }
    });
  },
);
