import { describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { PRINT_KINDS, type Printable } from '../../src/domain/printable.ts';
import { piecesOf, printsOfPiece } from '../../src/prints/catalogue.ts';
import { readContent } from '../../src/read/content.ts';
import { siteData } from '../../src/site/site-data.ts';
import { finishingCharts } from '../../src/views/finishing-chart.ts';
import { usUnitsInSentence } from '../../src/wording/us-units.ts';
import { chartsOf } from '../samples/demo.ts';
import { fontsOf } from '../samples/fonts.ts';
import { BRITISH_TERMS, METRIC_FIRST, termsIn } from './british-terms.ts';
import { bareMetric, type Said, textsOfData, textsOfPrint, turnedWrong } from './texts.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;

async function americanKitchen(): Promise<Content> {
  const { content, problems } = await readContent('test/kitchens/good/us-bakery');
  if (content === null) throw new Error(JSON.stringify(problems));
  return content;
}

const content = await americanKitchen();
const charts = chartsOf(content);
const finishing = finishingCharts(content);

const BY_RECIPE: ReadonlySet<string> = new Set(['tin-chart', 'bake-guide', 'recipe-card', 'wall-reference']);

/** Without the long run: one recipe plain, in each kind of print. */
const SAMPLE: Printable[] = PRINT_KINDS.map((print) => ({
  print,
  ...(BY_RECIPE.has(print) ? { recipeIds: ['yellow-butter'], flavourIds: [] } : {}),
  ...(print === 'recipe-card' ? { cardSizes: ['index 5 x 8 in'] } : {}),
  ...(print === 'wall-reference' ? { wallSizes: ['11 x 17 in'] } : {}),
}));

const pieces = [
  ...piecesOf({
    content: isLong ? content : { ...content, printables: SAMPLE },
    charts,
    finishing,
  }),
];
const { houseStyle: style } = content;
const { metrics } = fontsOf(style);
const prints = pieces.flatMap((piece) => printsOfPiece(piece, style, metrics));
const files = prints.map(({ path }) => ({ path: `print/${path}.pdf`, byteCount: 1000 }));
const data = siteData({ content, charts, files, finishing, logoSvg: null });

const listed = (said: readonly Said[], terms: typeof BRITISH_TERMS): string[] => [
  ...new Set(said.flatMap(({ where, text }) => termsIn(text, terms).map((found) => `${where}: ${found}`))),
];

/** Arithmetic is done, and shown, in metric; figures on labels are those that rules ask for, net weight ounces first. */
const METRIC_PAGES = new Set(['workingPages', 'labelPages', 'labels']);
/** A ruler has both units, one may choose millimeters or grams in the planner, and the bar to check a print by is 100 mm long everywhere. */
const BOTH_UNITS = ['scaleBar', 'otherLead', 'grams'];
const METRIC_KINDS = new Set(['label', 'lining-template']);
const METRIC_PRINTS = /^(labels|templates)\/|support-template/;

describe('An American kitchen', () => {
  it('says nothing British on any page', () => {
    const said = textsOfData(data);
    expect(said.length).toBeGreaterThan(10_000);
    expect(listed(said, BRITISH_TERMS)).toEqual([]);
  });

  it('says nothing British on any print', () => {
    const said = prints.flatMap(textsOfPrint);
    expect(said.length).toBeGreaterThan(3000);
    expect(listed(said, BRITISH_TERMS)).toEqual([]);
  });

  it('leads with ounces, cups, inches and °F on every page', () => {
    expect(listed(textsOfData(data, new Set([...METRIC_PAGES, ...BOTH_UNITS])), METRIC_FIRST)).toEqual([]);
  });

  it('shows no bare figure in grams, millimeters or milliliters', () => {
    expect(bareMetric(data, METRIC_PAGES)).toEqual([]);
    const measured = pieces.filter(({ kind }) => !METRIC_KINDS.has(kind));
    expect(measured.flatMap(({ kind, input }) => bareMetric(JSON.parse(input), undefined, kind))).toEqual([]);
  });

  it('leads with ounces, cups, inches and °F on every print', () => {
    const measured = prints.filter(({ path }) => !METRIC_PRINTS.test(path));
    expect(listed(measured.flatMap(textsOfPrint), METRIC_FIRST)).toEqual([]);
  });

  it('turns every bare figure once, never twice, on pages and in prints', () => {
    const pages = turnedWrong(data, METRIC_PAGES);
    const measured = pieces.filter(({ kind }) => !METRIC_KINDS.has(kind));
    const inputs = measured.map(({ kind, input }) => turnedWrong(JSON.parse(input), undefined, kind));
    expect(pages.count).toBeGreaterThan(1000);
    expect(inputs.reduce((sum, { count }) => sum + count, 0)).toBeGreaterThan(500);
    expect([...new Set([pages, ...inputs].flatMap(({ faults }) => faults))]).toEqual([]);
  });

  it('names no unit twice, and has no sentence that turning once more would change', () => {
    const said = [
      ...textsOfData(data, new Set([...METRIC_PAGES, ...BOTH_UNITS])),
      ...prints.filter(({ path }) => !METRIC_PRINTS.test(path)).flatMap(textsOfPrint),
    ];
    const twice =
      /[\d½¼¾⅓⅔⅛⅜⅝⅞][ \u00a0](?:(?:oz|lb|cups|qt)[ \u00a0](?:oz|lb|cups|qt)|in[ \u00a0]in(?! all))\b|\b(oz|lb|cups|qt|°F) ?\([^()]*\1/;
    const again = said.flatMap(({ where, text: spaced }) => {
      // Runs of a print are joined by spaces of their own.
      const text = spaced.replace(/ {2,}/g, ' ');
      const once = usUnitsInSentence(text);
      return once === text ? [] : [`${where}: ‘${text}’ → ‘${once}’`];
    });
    expect([...new Set(again)]).toEqual([]);
    expect([...new Set(said.filter(({ text }) => twice.test(text)).map(({ text }) => text))]).toEqual([]);
  });
});
