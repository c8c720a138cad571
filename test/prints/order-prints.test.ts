import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import type { HouseStyle } from '../../src/domain/house-style.ts';
import type { PaperName } from '../../src/domain/kitchen.ts';
import { costingPrint } from '../../src/prints/costing.ts';
import { orderSheetPrint } from '../../src/prints/order-sheet.ts';
import { quotePrint } from '../../src/prints/quote.ts';
import type { Print } from '../../src/prints/sheet/surface.ts';
import { shoppingListPrint } from '../../src/prints/shopping-list.ts';
import { weekSheetPrint } from '../../src/prints/week-sheet.ts';
import { type OrdersView, ordersView } from '../../src/views/orders.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { spokenText } from '../reading-back/structure.ts';
import { demoContent } from '../samples/demo.ts';
import { fontsOf } from '../samples/fonts.ts';
import { printed } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

let content: Content;
let view: OrdersView;
beforeAll(async () => {
  content = await demoContent();
  view = ordersView(content);
});

const order = (id: string): OrdersView['orders'][number] => {
  const found = view.orders.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no order ${id}`);
  return found;
};

type Draw = (style: HouseStyle, metrics: Parameters<typeof quotePrint>[2], paper: PaperName) => Print;

async function made(
  draw: Draw,
  style: HouseStyle,
  paper: PaperName,
): Promise<{ pdf: ReadPdf; bytes: Uint8Array }> {
  const fonts = fontsOf(style);
  const bytes = printed(draw(style, fonts.metrics, paper), fonts);
  return { bytes, pdf: await readPdf(bytes) };
}

const said = (pdf: ReadPdf): string =>
  pdf.pages
    .map((page) => (page.tree === null ? '' : spokenText(page.tree, page)))
    .join(' ')
    .replace(/\s+/g, ' ');

const faultsOf = (
  { pdf, bytes }: { pdf: ReadPdf; bytes: Uint8Array },
  { marginMm }: HouseStyle,
): string[] => [...sheetFaults(pdf, marginMm), ...pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)];

const sheetOf =
  (id: string): Draw =>
  (style, metrics, paper) =>
    orderSheetPrint(order(id), style, metrics, paper, 'en-GB');

describe('order sheets', () => {
  it.each([
    'thursday-sandwich',
    'orange-birthday',
    'numeral-six',
    'three-tiers-for-sixty',
    'square-and-round',
    'fair-trays',
  ])('%s is one spread, and the fullest on the shortest paper in the wider style too', (id) => {
    const styles = [content.houseStyle, ...content.houseStyles.map((one) => one.style)];
    const all = process.env.TINWRIGHT_LONG !== undefined || id === 'three-tiers-for-sixty';
    for (const style of all ? styles : styles.slice(0, 1)) {
      const { metrics } = fontsOf(style);
      for (const paper of all ? (['A4', 'Letter'] as const) : (['A4'] as const))
        expect(sheetOf(id)(style, metrics, paper).pages, `${style.name}, ${paper}`).toHaveLength(2);
    }
  });

  it('keep inside the margins, overlap nothing and mark all that they paint, in both styles', async () => {
    const [second] = content.houseStyles;
    if (second === undefined) throw new Error('no second style');
    const first = await made(sheetOf('three-tiers-for-sixty'), content.houseStyle, 'A4');
    expect(faultsOf(first, content.houseStyle)).toEqual([]);
    const other = await made(sheetOf('fair-trays'), second.style, 'Letter');
    expect(faultsOf(other, second.style)).toEqual([]);
  });

  it('set what one bakes from in 14 pt or more', async () => {
    const { pdf } = await made(sheetOf('fair-trays'), content.houseStyle, 'A4');
    const texts = pdf.pages.flatMap((page) => page.texts);
    const sizeOf = (text: string): number =>
      Math.max(...texts.filter((one) => one.text === text).map((one) => one.sizePt));
    for (const { bowlfuls } of order('fair-trays').batters)
      for (const bowl of bowlfuls) {
        const figures = [
          bowl.batter,
          ...bowl.lines.map(({ grams }) => grams),
          ...bowl.eggs.map(({ count }) => count),
        ];
        for (const { text } of figures) expect(sizeOf(text), text).toBeGreaterThanOrEqual(14);
      }
  });

  it('have a box to tick for every paper, weight, egg, tin and finish', async () => {
    const one = order('three-tiers-for-sixty');
    const { bytes } = await made(sheetOf(one.id), content.houseStyle, 'A4');
    const boxes = (
      Buffer.from(bytes)
        .toString('latin1')
        .match(/74006f0020007400690063006b|to tick/gi) ?? []
    ).length;
    const bowls = one.batters.flatMap(({ bowlfuls }) => bowlfuls);
    const rows =
      bowls.reduce((sum, bowl) => sum + bowl.lines.length + bowl.eggs.length + 1 + bowl.tins.length, 0) +
      2 * one.tiers.length +
      one.tiers.reduce((sum, tier) => sum + tier.finishes.length, 0) +
      one.finishes.reduce((sum, finish) => sum + finish.lines.length, 0) +
      one.papers.length;
    expect(boxes).toBe(rows);
  });

  it('say what must be told and signed at the hand-over', async () => {
    const { pdf } = await made(sheetOf('three-tiers-for-sixty'), content.houseStyle, 'A4');
    const text = said(pdf);
    for (const part of [
      'Contains milk, eggs and wheat (gluten).',
      'Asked about allergies on',
      'fresh flowers in picks',
    ])
      expect(text).toContain(part);
  });

  it('say of several best-before dates which cakes each belongs to, and of one date none', async () => {
    const foods = (id: string, date: string) =>
      order(id)
        .keeping.filter(({ dateText }) => dateText === date)
        .map(({ foodName }) => foodName);
    const dates = [...new Set(order('fair-trays').keeping.flatMap(({ dateText }) => dateText ?? []))];
    expect(dates.length).toBeGreaterThan(1);
    const text = said((await made(sheetOf('fair-trays'), content.houseStyle, 'A4')).pdf);
    for (const date of dates) {
      const named = [...new Set(foods('fair-trays', date))].join('; ');
      expect(text).toContain(`${named}. ${date}.`);
    }
    const one = said((await made(sheetOf('orange-birthday'), content.houseStyle, 'A4')).pdf);
    expect(one).not.toContain(`${order('orange-birthday').keeping[0]?.foodName}. Best before`);
  });
});

describe('quotes, shopping lists and week sheets', () => {
  it('keep inside the margins, overlap nothing and mark all that they paint', async () => {
    const draws: Draw[] = [
      (style, metrics, paper) => quotePrint(order('three-tiers-for-sixty'), style, metrics, paper, 'en-GB'),
      (style, metrics, paper) => {
        const week = view.weeks[0];
        if (week === undefined) throw new Error('no week');
        return shoppingListPrint(week.shopping, week, style, metrics, paper, 'en-GB');
      },
      (style, metrics, paper) => {
        const week = view.weeks[0];
        if (week === undefined) throw new Error('no week');
        return weekSheetPrint(week, style, metrics, paper, 'en-GB');
      },
    ];
    // In the other style too; the quick run draws only the longest sheet so.
    const [second] = content.houseStyles;
    for (const [at, draw] of draws.entries()) {
      expect(faultsOf(await made(draw, content.houseStyle, 'A4'), content.houseStyle)).toEqual([]);
      if (second && (at === draws.length - 1 || process.env.TINWRIGHT_LONG === '1'))
        expect(faultsOf(await made(draw, second.style, 'Letter'), second.style)).toEqual([]);
    }
  });

  it('are one page where a list can be, a week of five orders too, on either paper in either style', () => {
    for (const { shopping, ...week } of view.weeks)
      for (const style of [content.houseStyle, ...content.houseStyles.map((other) => other.style)])
        for (const paper of ['A4', 'Letter'] as const) {
          const print = shoppingListPrint(shopping, week, style, fontsOf(style).metrics, paper, 'en-GB');
          expect(print.pages).toHaveLength(1);
        }
  });

  it('say how long a quote holds, what is due when, and that the drive is in the price', async () => {
    const { quote, ...one } = order('three-tiers-for-sixty');
    const draw: Draw = (style, metrics, paper) =>
      quotePrint({ ...one, quote }, style, metrics, paper, 'en-GB');
    const text = said((await made(draw, content.houseStyle, 'A4')).pdf);
    // Dated 1 November, handed over on the 28th; a quarter to book within 14 days, the rest 7 days before.
    for (const part of [
      'Valid until 15 November 2026.',
      'Deposit, 25 %, due by 15 November 2026',
      'Balance, due by 21 November 2026',
      'Delivery and setting up in the price of the cake',
    ])
      expect(text).toContain(part);
    const sum = quote.payments.reduce((all, payment) => all + payment.sum.value, 0);
    expect(sum).toBe(quote.total.value);
    expect(order('orange-birthday').quote.payments.map(({ kind, dueText }) => [kind, dueText])).toEqual([
      ['whole', 'due at the hand-over'],
    ]);
    // Its drive has a line and a price of its own.
    expect(order('square-and-round').quote.delivery).toBeNull();
  });

  it('cost what goes to a stall, where nobody is quoted to, on one page', async () => {
    const one = order('fair-trays');
    const draw: Draw = (style, metrics, paper) => costingPrint(one, style, metrics, paper, 'en-GB');
    const costing = await made(draw, content.houseStyle, 'A4');
    expect(costing.pdf.pages).toHaveLength(1);
    expect(faultsOf(costing, content.houseStyle)).toEqual([]);
    const text = said(costing.pdf);
    for (const part of [
      'Costing: ',
      one.cost.cost.text,
      one.cost.margin.text,
      one.quote.total.text,
      'a piece',
    ])
      expect(text).toContain(part);
    expect(text).not.toMatch(/Quote|For STALL-12|Deposit|Valid until/);
    const each = one.quote.perPiece?.each.value ?? 0;
    const pieces = one.portions.value;
    expect(each * pieces).toBeGreaterThanOrEqual(one.quote.total.value);
    expect((each - 1) * pieces).toBeLessThan(one.quote.total.value);
  });

  it('a quote carries the code of the customer and never a cost', async () => {
    const one = order('orange-birthday');
    const draw: Draw = (style, metrics, paper) => quotePrint(one, style, metrics, paper, 'en-GB');
    const text = said((await made(draw, content.houseStyle, 'A4')).pdf);
    expect(text).toContain('R-2203');
    expect(text).toContain(one.quote.total.text);
    for (const { text: hidden } of [one.cost.cost, one.cost.margin]) expect(text).not.toContain(hidden);
  });
});

describe('a sheet of a kitchen that keeps its orders to itself', () => {
  it('carries no code to a page that is not there', async () => {
    const fonts = fontsOf(content.houseStyle);
    const { metrics } = fonts;
    const open = orderSheetPrint(order('fair-trays'), content.houseStyle, metrics, 'A4', 'en-GB', {
      siteUrl: 'https://bakery.example.org',
    });
    expect(said(await readPdf(printed(open, fonts)))).toContain('This order on screen');
    expect(said((await made(sheetOf('fair-trays'), content.houseStyle, 'A4')).pdf)).not.toContain(
      'This order on screen',
    );
  });
});
