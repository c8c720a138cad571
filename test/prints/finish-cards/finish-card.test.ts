import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../../src/domain/content.ts';
import type { HouseStyle } from '../../../src/domain/house-style.ts';
import { CARD_SIZES, type CardSize } from '../../../src/domain/printable.ts';
import { finishCardPrints } from '../../../src/prints/finish-card.ts';
import { finishCards } from '../../../src/prints/finish-card-prints.ts';
import type { Print } from '../../../src/prints/sheet/surface.ts';
import { finishCardViews } from '../../../src/views/finish-card.ts';
import type { FinishCardView } from '../../../src/views/finish-card.types.ts';
import { finishingChartView } from '../../../src/views/finishing-chart.ts';
import { inHomeUnits } from '../../../src/views/home-units.ts';
import { wantedPrints } from '../../../src/views/wanted-prints.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../../reading-back/read-pdf.ts';
import { spokenText } from '../../reading-back/structure.ts';
import { demoContent } from '../../samples/demo.ts';
import { fontsOf } from '../../samples/fonts.ts';
import { printed } from '../../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';

const LONG = process.env.TINWRIGHT_LONG === '1';
/** Paper around the text, mm: what cutting by hand and a thumb ask for. */
const MARGINS = { top: 4.9, right: 4.9, bottom: 4.9, left: 4.9 };

let content: Content;
let views: FinishCardView[];
beforeAll(async () => {
  content = await demoContent();
  views = finishCardViews({ content, chart: finishingChartView(content) });
});

const cardOf = (id: string): FinishCardView => {
  const found = views.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no card of ${id}`);
  return found;
};

function made(view: FinishCardView, size: CardSize, style: HouseStyle): { print: Print; bytes: Uint8Array } {
  const fonts = fontsOf(style);
  const [print] = finishCardPrints({ view, sizes: [size], lang: 'en-GB' }, style, fonts.metrics);
  if (print === undefined) throw new Error('no card');
  return { print, bytes: printed(print, fonts) };
}

const said = (pdf: ReadPdf): string =>
  pdf.pages
    .map((page) => (page.tree === null ? '' : spokenText(page.tree, page)))
    .join(' ')
    .replace(/\s+/g, ' ');

describe('the cards of finishes', () => {
  it('are one for every finish, each on one face of every size but the smallest', () => {
    expect(views.map(({ id }) => id).sort()).toEqual(content.finishes.map(({ id }) => id).sort());
    const smaller: readonly CardSize[] = ['A6', 'index 4 x 6 in'];
    const sizes = LONG ? CARD_SIZES.filter((size) => size !== 'index 3 x 5 in') : smaller;
    for (const style of [content.houseStyle, ...content.houseStyles.map((one) => one.style)]) {
      const { metrics } = fontsOf(style);
      for (const view of views)
        for (const { path, pages } of finishCardPrints({ view, sizes, lang: 'en-GB' }, style, metrics))
          expect(pages.length, `${path}, ${style.name}`).toBe(1);
    }
  });

  it('stand clear of their edges, nothing overlapping, 8 pt or more, all marked, in both house styles', async () => {
    const [second] = content.houseStyles;
    if (second === undefined) throw new Error('the demo has one style only');
    const fullest = ['meringue-buttercream', 'lemon-curd'];
    const some = LONG ? views : views.filter(({ id }) => fullest.includes(id));
    for (const view of some)
      for (const style of [content.houseStyle, second.style])
        for (const size of LONG
          ? CARD_SIZES
          : ([style === second.style ? 'A6' : 'index 3 x 5 in'] as const)) {
          const { bytes, print } = made(view, size, style);
          expect(sheetFaults(await readPdf(bytes), MARGINS), print.path).toEqual([]);
          expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting), print.path).toEqual([]);
        }
  });

  it('give round batches that add up to what they make, to what the scale can tell', () => {
    expect(cardOf('vanilla-buttercream').batches.map(({ make }) => make.text)).toEqual([
      ...['250', '500', '1,000', '2,000'],
    ]);
    // 1,000 g of dark ganache, 2 : 1: two thirds chocolate, to 5 g.
    const ganache = cardOf('dark-ganache').batches[2]?.parts.map(({ figure }) => figure.value);
    expect(ganache).toEqual([665, 335]);
    // Jam loses 18 % in the pan: what is weighed is 1,000 ÷ 0.82 = 1,220 g.
    const jam = cardOf('raspberry-jam').batches[2]?.parts ?? [];
    const weighed = jam.reduce((sum, { figure }) => sum + figure.value, 0);
    expect(Math.abs(weighed - 1220)).toBeLessThan(5);
    expect(cardOf('raspberry-jam').boilsAwayText).toBe('18 % of what is weighed boils away.');
    // 47 g of white at 51 × 2/3 g each are two whites.
    expect(cardOf('meringue-buttercream').batches[0]?.parts[0]?.spoons).toBe('from 2 whites');
    for (const id of ['sugarpaste', 'marzipan']) expect(cardOf(id).batches).toEqual([]);
  });

  it('say for a tin what the finishing chart says, how to make it, how it keeps and what to beware of', async () => {
    const chart = finishingChartView(content);
    const row = chart.rows.find(({ id }) => id === 'round-8');
    const at = chart.columns.findIndex(({ id }) => id === 'vanilla-buttercream--coating');
    const text = said(await readPdf(made(cardOf('vanilla-buttercream'), 'A5', content.houseStyle).bytes));
    for (const part of [
      `Eight-inch round ${row?.cells[at - 2]?.make.text}`,
      row?.cells[at]?.make.text ?? 'none',
      'with 10 % to spare for bowl, bag and scraper',
      'Beat the butter at 18 to 20 °C',
      'Keeps 3 days in a cool place.',
      'Made with ingredients that contain milk.',
    ])
      expect(text).toContain(part);
  });

  it('warn of heat and of raw white where the method does not', () => {
    const codes = (id: string): string[] => cardOf(id).cautions.map(({ code }) => code);
    expect(codes('lemon-curd')).toContain('hot-sugar');
    expect(codes('sugar-syrup')).not.toContain('hot-sugar');
    expect(codes('royal-icing')).toContain('raw-white');
  });

  it('are told in ounces and cups in America', () => {
    const american: Content = { ...content, kitchen: { ...content.kitchen, locale: 'en-US' } };
    const chart = finishingChartView(american);
    const [card] = inHomeUnits(finishCardViews({ content: american, chart }), american.kitchen);
    expect(card?.mass).toBe('oz');
    expect(card?.batches.map(({ make }) => make.text)).toEqual(['8', '16', '32', '64']);
  });

  it('come in the sizes asked for, else in those that go with the papers', () => {
    const paths = (printables: Content['printables']): number[] =>
      wantedPrints({ ...content, printables }, [], 'finish-card').flatMap((wanted) => {
        const source = { finishing: [finishingChartView(wanted.content)], ...wanted };
        return [...finishCards.inputs(source)].map((ask) => (ask as { sizes: CardSize[] }).sizes.length);
      });
    expect(paths(null)).toEqual(views.map(() => 4));
    const cardSizes: CardSize[] = ['index 3 x 5 in'];
    expect(paths([{ print: 'finish-card', finishIds: ['royal-icing'], cardSizes }])).toEqual([1]);
  });
});
