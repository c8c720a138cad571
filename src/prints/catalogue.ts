/**
 * Every printable there is, one entry each: from the content and its views to prints, in every paper that the
 * kitchen uses. The build, the tests of sheets and the list of downloads all go through this list.
 */
import type { Content } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { Kitchen, Locale, PaperName } from '../domain/kitchen.ts';
import type { BakeGuideView } from '../views/bake-guide.types.ts';
import { bookletView } from '../views/booklet/booklet.ts';
import type { BookletView } from '../views/booklet/booklet.types.ts';
import type { PrintedViews } from '../views/chart-views.ts';
import { finishingCharts } from '../views/finishing-chart.ts';
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import { inHomeUnits } from '../views/home-units.ts';
import { orderLabels } from '../views/label-orders.ts';
import { sampleLabels } from '../views/label-samples.ts';
import type { LiningTemplateView } from '../views/lining-template.types.ts';
import { portionsView } from '../views/portions.ts';
import type { PortionsView } from '../views/portions.types.ts';
import type { TinChartView } from '../views/tin-chart.types.ts';
import { type WantedPrints, wantedPrints } from '../views/wanted-prints.ts';
import { bakeGuidePrint } from './bake-guide.ts';
import { bookletPrints } from './booklet.ts';
import { cuttingGuidePrint } from './cutting-guide.ts';
import { finishCards } from './finish-card-prints.ts';
import { finishingChartPrint } from './finishing-chart.ts';
import { type LabelsAsk, labelPrints } from './label-prints.ts';
import { liningTemplatePrint } from './lining-template.ts';
import { orderPrintables } from './order-prints.ts';
import { type Printable, type PrintPiece, printable } from './printable.ts';
import { type CardsAsk, cardsAsks, recipeCardsPrint, recipeCardViews } from './recipe-card-prints.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { wantedTemplates } from './template-prints.ts';
import { tinChartPrint } from './tin-chart.ts';
import { type WallAsk, wallAsks, wallPrints } from './wall-prints.ts';

/** What the prints of a kitchen are made from, whatever the house style. */
export type PrintContent = Pick<PrintSource, 'content' | 'charts' | 'finishing'>;

/** What all prints of a kitchen in one house style are made from. */
export interface PrintSource {
  content: Content;
  charts: readonly PrintedViews[];
  finishing: readonly FinishingChartView[];
  style: HouseStyle;
  metrics: Metrics;
}

/** What one kind of print is made from: only what `printables` asks of it. */
export type WantedSource = Pick<PrintSource, 'finishing'> & WantedPrints;

/** Sheets of a kitchen with a site carry a code that leads there. */
const siteOf = ({ siteUrl }: Kitchen): { siteUrl?: string } => (siteUrl === undefined ? {} : { siteUrl });

interface OnPaper<View> {
  view: View;
  paper: PaperName;
  lang: Locale;
  options: { siteUrl?: string };
}

/** One view on each of the kitchen's papers. */
const onEachPaper = <View>(view: View, { kitchen }: Content): OnPaper<View>[] =>
  kitchen.paper.map((paper) => ({ view, paper, lang: kitchen.locale, options: siteOf(kitchen) }));

type SomeCharts = readonly { readonly chart: TinChartView }[];

/** One at a time: a large kitchen's charts are unpacked as they are asked for. */
function plainCharts(charts: SomeCharts): TinChartView[] {
  return charts.flatMap(({ chart }) => (chart.flavours.length === 0 ? [chart] : []));
}

/** Those that the wall shows. */
function plainElseAll(charts: SomeCharts): TinChartView[] {
  const plain = plainCharts(charts);
  return plain.length > 0 ? plain : charts.map(({ chart }) => chart);
}

const tinCharts = printable<OnPaper<TinChartView> & { mass: 'g' | 'oz' }>({
  kind: 'tin-chart',
  *inputs({ content, charts, mass }) {
    for (const { chart } of charts) yield* onEachPaper(chart, content).map((one) => ({ ...one, mass }));
  },
  draw: ({ view, paper, lang, options, mass }, style, metrics) => [
    tinChartPrint(view, style, metrics, paper, lang, { ...options, mass }),
  ],
});

const liningTemplatesOfTins = printable<Pick<OnPaper<LiningTemplateView>, 'view' | 'paper' | 'lang'>>({
  kind: 'lining-template',
  inputs: ({ content }) => wantedTemplates(content),
  draw: ({ view, paper, lang }, style, metrics) => [liningTemplatePrint(view, style, metrics, paper, lang)],
});

const finishingSheets = printable<OnPaper<FinishingChartView>>({
  kind: 'finishing-chart',
  inputs: ({ content, finishing }) => finishing.flatMap((view) => onEachPaper(view, content)),
  draw: ({ view, paper, lang, options }, style, metrics) => [
    finishingChartPrint(view, style, metrics, paper, lang, options),
  ],
});

const bakeGuides = printable<OnPaper<BakeGuideView>>({
  kind: 'bake-guide',
  inputs: ({ content, guides }) => guides.flatMap((view) => onEachPaper(view, content)),
  draw: ({ view, paper, lang, options }, style, metrics) => [
    bakeGuidePrint(view, style, metrics, paper, lang, options),
  ],
});

const recipeCards = printable<CardsAsk>({
  kind: 'recipe-card',
  inputs: (wanted) => {
    const { paper: papers, locale: lang } = wanted.content.kitchen;
    return cardsAsks(recipeCardViews(wanted), { sizes: wanted.cardSizes, papers, lang });
  },
  draw: recipeCardsPrint,
});

const wallReferenceSheets = printable<WallAsk>({
  kind: 'wall-reference',
  inputs: ({ content, charts, mass, wallSizes }) =>
    wallAsks({ content, charts: plainElseAll(charts), mass, wallSizes }),
  draw: wallPrints,
});

const booklets = printable<Pick<OnPaper<BookletView>, 'view' | 'paper' | 'lang'>>({
  kind: 'booklet',
  inputs({ content, charts, finishing, mass }) {
    const { paper: papers, locale: lang } = content.kitchen;
    const source = { content, charts: plainCharts(charts), finishing, mass };
    const whole = bookletView(source);
    const { kitchen } = content;
    const recipes = inHomeUnits(whole.recipes, kitchen, mass);
    const view = { ...inHomeUnits(whole, kitchen), recipes };
    return papers.map((paper) => ({ view, paper, lang }));
  },
  draw: ({ view, paper, lang }, style, metrics) => bookletPrints(view, style, metrics, paper, lang),
});

const cuttingGuides = printable<OnPaper<PortionsView>>({
  kind: 'cutting-guide',
  inputs({ content }) {
    const view = inHomeUnits(portionsView(content), content.kitchen);
    return view.rows.length === 0 ? [] : onEachPaper(view, content);
  },
  draw: ({ view, paper, lang, options }, style, metrics) => [
    cuttingGuidePrint(view, style, metrics, paper, lang, options),
  ],
});

/**
 * Where labels are asked for of some recipes, orders with a cake of another have none here. Where none is left out it
 * is the same content, whose orders are worked out already.
 */
function withWholeOrders(content: Content): Content {
  const ids = new Set(content.recipes.map(({ id }) => id));
  const orders = content.orders.filter(({ tiers }) => tiers.every(({ recipeId }) => ids.has(recipeId)));
  return orders.length === content.orders.length ? content : { ...content, orders };
}

const labels = printable<LabelsAsk>({
  kind: 'label',
  inputs({ content, charts }) {
    const wanted = charts.map(({ chart }) => chart.id);
    const { kitchen, label } = content;
    const common = { sizes: label.sizes, papers: kitchen.paper, lang: kitchen.locale };
    const made = sampleLabels(content)
      .filter(({ id }) => wanted.includes(id))
      .flatMap(({ view }) => (view === null ? [] : [{ view, copies: 1 }]));
    const ofOrders = orderLabels(withWholeOrders(content)).map(({ orderId, labels: all }) => ({
      ...common,
      prefix: `orders/${orderId}-`,
      labels: all.flatMap(({ view, copies }) => (view === null ? [] : [{ view, copies }])),
    }));
    return [{ ...common, prefix: '', labels: made }, ...ofOrders];
  },
  draw: (ask, style, metrics) => labelPrints({ ...ask, style, metrics }),
});

export const PRINTABLES: readonly Printable[] = [
  tinCharts,
  bakeGuides,
  finishingSheets,
  recipeCards,
  finishCards,
  booklets,
  wallReferenceSheets,
  cuttingGuides,
  labels,
  ...orderPrintables,
  liningTemplatesOfTins,
];

/** The prints of an entry with a name lie in a folder of that name: 'tin-charts/my-four/…'. */
function inFolder(print: Print, name: string | null): Print {
  return name === null ? print : { ...print, path: print.path.replace('/', `/${name}/`) };
}

/** The pieces of one kind, each told when it is asked for; what `printables` leaves out is not made. */
export function* piecesOfKind(
  { content, charts, finishing }: PrintContent,
  kind: string,
): Generator<PrintPiece> {
  const one = PRINTABLES.find((printed) => printed.kind === kind);
  if (one === undefined) return;
  for (const wanted of wantedPrints(content, charts, kind)) {
    // An entry of `printables` may leave out tins and finishes: its finishing chart is one of its own.
    const own = wanted.content === content ? finishing : finishingCharts(wanted.content);
    for (const input of one.inputs({ finishing: inHomeUnits(own, wanted.content.kitchen), ...wanted }))
      yield { kind, folder: wanted.name, input: JSON.stringify(input) };
  }
}

/**
 * All pieces of a kitchen's prints in the order of the catalogue; they are the same in every house style. A large
 * kitchen's text is larger than its memory should be: who takes one piece after the other holds one.
 */
export function* piecesOf(source: PrintContent): Generator<PrintPiece> {
  for (const { kind } of PRINTABLES) yield* piecesOfKind(source, kind);
}

/** The last piece's: it is asked for in every house style, one after the other. Drawing changes nothing of it. */
let lastRead: { input: string; value: unknown } | null = null;

function inputOf({ input }: PrintPiece): unknown {
  if (lastRead?.input !== input) lastRead = { input, value: JSON.parse(input) };
  return lastRead.value;
}

/** The prints of a piece: drawn from its text, a house style and its fonts, and nothing else. */
export function printsOfPiece(piece: PrintPiece, style: HouseStyle, metrics: Metrics): Print[] {
  const { kind, folder } = piece;
  const drawn = PRINTABLES.find((one) => one.kind === kind);
  if (drawn === undefined) throw new Error(`no printable '${kind}'`);
  return drawn.draw(inputOf(piece), style, metrics).map((print) => inFolder(print, folder));
}

/** The prints of one kind in one house style. */
export const printsOfKind = (source: PrintSource, kind: string): Print[] =>
  [...piecesOfKind(source, kind)].flatMap((piece) => printsOfPiece(piece, source.style, source.metrics));

/** All prints of a kitchen in one house style, in the order of the catalogue. */
export const printsOf = (source: PrintSource): Print[] =>
  PRINTABLES.flatMap(({ kind }) => printsOfKind(source, kind));
