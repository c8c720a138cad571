import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { houseFonts } from '../../src/commands/make/house-fonts.ts';
import { type LabelForm, labelFace } from '../../src/prints/food-label/label-face.ts';
import { leastSizePt } from '../../src/prints/food-label/label-type.ts';
import { labelSheetPrint } from '../../src/prints/food-label.ts';
import { labelPrints } from '../../src/prints/label-prints.ts';
import { sheetContext } from '../../src/prints/sheet/sheet-context.ts';
import type { LabelView } from '../../src/views/label.types.ts';
import { orderLabels } from '../../src/views/label-orders.ts';
import { sampleLabels } from '../../src/views/label-samples.ts';
import { labelWordsFor } from '../../src/wording/label/index.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { readType } from '../reading-back/read-type.ts';
import { demoContent } from '../samples/demo.ts';
import { printed } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

const content = await demoContent();
const { kitchen, label, houseStyle, houseStyles } = content;
const views = sampleLabels(content).flatMap(({ view }) => view ?? []);
const wanted = [
  'harvest-fruit',
  'vanilla-equal-weights',
  'vanilla-equal-weights--made-without-egg',
  'egg-white-ring',
];
const some = process.env.TINWRIGHT_LONG ? views : views.filter(({ id }) => wanted.includes(id));
const words = labelWordsFor('en-GB');

const dressed = await Promise.all(
  [houseStyle, ...houseStyles.map(({ style }) => style)].map(async (style) => {
    const fonts = await houseFonts(style, 'content', 'house-style.yaml');
    if (!fonts.ok) throw new Error(JSON.stringify(fonts.problems));
    return { style, fonts: fonts.value, context: sheetContext(style, fonts.value.metrics) };
  }),
);

describe.each(dressed)('sheets of labels in the style $style.name', ({ style, fonts, context }) => {
  const prints = labelPrints({
    prefix: '',
    labels: some.map((view) => ({ view, copies: 1 })),
    sizes: label.sizes,
    style,
    metrics: fonts.metrics,
    papers: kitchen.paper,
    lang: kitchen.locale,
  });
  const bytesOf = new Map(prints.map((print) => [print.path, printed(print, fonts)]));

  it('are full labels and allergen cards, in both papers', () => {
    expect([...bytesOf.keys()].sort()).toEqual([
      'labels/allergen-cards-85x55-a4',
      'labels/allergen-cards-85x55-letter',
      'labels/full-85x110-a4',
      'labels/full-85x110-letter',
    ]);
  });

  it.each([...bytesOf])('%s: inside the margins, nothing overlapping, all marked', async (_path, bytes) => {
    const pdf = await readPdf(bytes);
    const leastPt = Math.min(8, leastSizePt(label.xHeightMm, fonts.metrics));
    expect(sheetFaults(pdf, style.marginMm, leastPt)).toEqual([]);
    expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
    const said = pdf.pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(said).toContain('A draft: check it against your local rules');
  });

  it.each([...bytesOf])('%s: every x is 1.2 mm high or more, measured in the file', async (_path, bytes) => {
    const texts = await readType(bytes);
    expect(texts.length).toBeGreaterThan(20);
    expect(Math.min(...texts.map(({ xHeightMm }) => xHeightMm))).toBeGreaterThanOrEqual(
      label.xHeightMm - 1e-3,
    );
  });

  it('set every allergen, and only allergens, in bold capitals', async () => {
    for (const view of some) {
      const print = labelSheetPrint({
        path: 'labels/one',
        labels: [{ view, copies: 1 }],
        form: 'full',
        size: { widthMm: 85, heightMm: 110 },
        style,
        metrics: fonts.metrics,
        paper: 'A4',
        lang: 'en-GB',
      });
      if (print === null) throw new Error('nothing printed');
      const boldName = fonts.textBold.font.postscriptName;
      const texts = await readType(printed(print, fonts));
      const from = texts.findIndex(({ text }) => text.startsWith(words.ingredients));
      const onLabel = texts.slice(from);
      const flat = (all: readonly string[]): string => all.join('').replace(/\s+/g, '');
      const bold = flat(onLabel.filter(({ fontName }) => fontName === boldName).map(({ text }) => text));
      const runs = view.lines.flatMap((line) => line.runs);
      expect(bold).toBe(flat(runs.filter(({ strong }) => strong).map(({ text }) => text)));
      expect(bold).toBe(bold.toUpperCase());
      const listed = flat(view.lines[0]?.runs.map(({ text }) => text) ?? []);
      expect(flat(onLabel.map(({ text }) => text))).toContain(listed);
    }
  });

  it('refuse a label that its size cannot hold, and say a size that can', () => {
    for (const view of some) {
      const size = { widthMm: 60, heightMm: 30 };
      const face = labelFace({ view, form: 'full', size, context, words });
      if (face.ok) throw new Error('it fits?');
      const [problem] = face.problems;
      expect(problem?.code).toBe('label-too-small');
      const [, width, height] = /(\d+) mm wide and (\d+) mm high/.exec(problem?.hint ?? '') ?? [];
      const needed = { widthMm: Number(width), heightMm: Number(height) };
      expect(labelFace({ view, form: 'full', size: needed, context, words }).ok).toBe(true);
      const narrow = labelFace({ view, form: 'full', size: { widthMm: 20, heightMm: 200 }, context, words });
      expect(narrow.ok ? '' : narrow.problems[0]?.hint).toMatch(/Use a label \d+ mm wide or wider/);
    }
  });

  it('never set type below the least, whatever the size', () => {
    const least = leastSizePt(label.xHeightMm, fonts.metrics);
    fc.assert(
      fc.property(
        fc.constantFrom(...some),
        fc.constantFrom<LabelForm>('full', 'card'),
        fc.integer({ min: 30, max: 180 }),
        fc.integer({ min: 30, max: 200 }),
        (view, form, widthMm, heightMm) => {
          const face = labelFace({ view, form, size: { widthMm, heightMm }, context, words });
          if (face.ok) expect(face.value.sizePt).toBeGreaterThanOrEqual(least - 1e-9);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('labels of orders', () => {
  const [first] = dressed;
  if (first === undefined) throw new Error('no style');
  const orders = orderLabels(content);
  const chosen = process.env.TINWRIGHT_LONG
    ? orders
    : orders.filter(({ orderId }) => orderId === 'three-tiers-for-sixty');

  it.each(chosen)('$orderId: as many as there are cakes, inside the margins', async ({ orderId, labels }) => {
    const prints = labelPrints({
      prefix: `orders/${orderId}-`,
      labels: labels.flatMap(({ view, copies }) => (view === null ? [] : [{ view, copies }])),
      sizes: label.sizes,
      style: first.style,
      metrics: first.fonts.metrics,
      papers: ['A4'],
      lang: 'en-GB',
    });
    expect(prints.map(({ path }) => path)[0]).toBe(`labels/orders/${orderId}-full-85x110-a4`);
    for (const print of prints) {
      const pdf = await readPdf(printed(print, first.fonts));
      expect(sheetFaults(pdf, first.style.marginMm, 6.5)).toEqual([]);
      const said = pdf.pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
      const cakes = labels.reduce((sum, { copies }) => sum + copies, 0);
      expect(said.match(/Order R-1042/g) ?? []).toHaveLength(orderId === 'three-tiers-for-sixty' ? cakes : 0);
    }
  });
});

describe('a small pack', () => {
  it('may have an x of 0.9 mm, so that the same label fits a smaller size', () => {
    const [first] = dressed;
    const [view] = some;
    if (first === undefined || view === undefined) throw new Error('nothing to set');
    const heightOf = (xHeightMm: number): number => {
      const size = { widthMm: 60, heightMm: 20 };
      const face = labelFace({
        view: { ...view, xHeightMm },
        form: 'full',
        size,
        context: first.context,
        words,
      });
      return Number(/(\d+) mm high/.exec(face.ok ? '' : (face.problems[0]?.hint ?? ''))?.[1]);
    };
    expect(heightOf(0.9)).toBeLessThan(heightOf(1.2) * 0.75);
    const least = leastSizePt(0.9, first.fonts.metrics);
    expect(first.fonts.metrics.xHeightMm('text', least)).toBeGreaterThanOrEqual(0.9);
  });
});

describe('a sheet of labels', () => {
  const [first] = dressed;
  if (first === undefined) throw new Error('no style');
  const { style, fonts } = first;
  const [view] = some as [LabelView, ...LabelView[]];
  const ask = {
    path: 'labels/fair',
    form: 'full' as const,
    style,
    metrics: fonts.metrics,
    paper: 'A4' as const,
    lang: 'en-GB' as const,
  };

  it('repeats a label as often as asked', async () => {
    const print = labelSheetPrint({
      ...ask,
      labels: [{ view, copies: 6 }],
      size: { widthMm: 85, heightMm: 110 },
    });
    if (print === null) throw new Error('nothing printed');
    const texts = await readType(printed(print, fonts));
    expect(texts.filter(({ text }) => text.startsWith(words.ingredients))).toHaveLength(6);
  });

  it('says so when a label fits neither its size nor the paper', async () => {
    for (const [size, told] of [
      [{ widthMm: 60, heightMm: 30 }, 'no label at this size'],
      [{ widthMm: 200, heightMm: 280 }, 'does not fit on a sheet of A4'],
    ] as const) {
      const print = labelSheetPrint({ ...ask, labels: [{ view, copies: 1 }], size });
      if (print === null) throw new Error('nothing printed');
      const said = (await readPdf(printed(print, fonts))).pages.flatMap(({ texts }) =>
        texts.map(({ text }) => text),
      );
      expect(said.join(' ')).toContain(told);
    }
  });

  it('is not made of nothing', () => {
    expect(labelSheetPrint({ ...ask, labels: [], size: { widthMm: 85, heightMm: 110 } })).toBeNull();
  });
});
