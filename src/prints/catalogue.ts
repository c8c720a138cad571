/**
 * Every printable there is, one entry each: from the content and its views to prints, in every paper that the
 * kitchen uses. The build, the tests of sheets and the list of downloads all go through this list.
 */
import type { Content } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { bookletView } from '../views/booklet/booklet.ts';
import type { PrintedViews } from '../views/chart-views.ts';
import { finishingCharts } from '../views/finishing-chart.ts';
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import { orderLabels } from '../views/label-orders.ts';
import { sampleLabels } from '../views/label-samples.ts';
import { portionsView } from '../views/portions.ts';
import { type WantedPrints, wantedPrints } from '../views/wanted-prints.ts';
import { bakeGuidePrint } from './bake-guide.ts';
import { bookletPrints } from './booklet.ts';
import { cuttingGuidePrint } from './cutting-guide.ts';
import { finishingChartPrint } from './finishing-chart.ts';
import { labelPrints } from './label-prints.ts';
import { orderPrintables } from './order-prints.ts';
import { recipeCardPrints, recipeCardViews } from './recipe-card-prints.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { templatePrints } from './template-prints.ts';
import { tinChartPrint } from './tin-chart.ts';
import { wallPrints } from './wall-prints.ts';

/** What all prints of a kitchen are made from. */
export interface PrintSource {
  content: Content;
  charts: readonly PrintedViews[];
  finishing: readonly FinishingChartView[];
  style: HouseStyle;
  metrics: Metrics;
}

/** What one kind of print is made from: only what `printables` asks of it. */
export type WantedSource = Pick<PrintSource, 'finishing' | 'style' | 'metrics'> & WantedPrints;

export interface Printable {
  /** As `printables:` in kitchen.yaml names it; its prints lie in the folder of the same name, in the plural. */
  kind: string;
  prints(source: WantedSource): Print[];
}

/** Sheets of a kitchen with a site carry a code that leads there. */
const siteOf = ({ siteUrl }: Kitchen): { siteUrl?: string } => (siteUrl === undefined ? {} : { siteUrl });

const tinCharts: Printable = {
  kind: 'tin-chart',
  prints({ content: { kitchen }, charts, style, metrics, mass }) {
    const options = { mass, ...siteOf(kitchen) };
    return charts.flatMap(({ chart }) =>
      kitchen.paper.map((paper) => tinChartPrint(chart, style, metrics, paper, kitchen.locale, options)),
    );
  },
};

const liningTemplates: Printable = {
  kind: 'lining-template',
  prints: ({ content, metrics, style }) => templatePrints({ ...content, houseStyle: style }, metrics),
};

const finishingSheets: Printable = {
  kind: 'finishing-chart',
  prints: ({ content: { kitchen }, finishing, style, metrics }) =>
    finishing.flatMap((view) =>
      kitchen.paper.map((paper) =>
        finishingChartPrint(view, style, metrics, paper, kitchen.locale, siteOf(kitchen)),
      ),
    ),
};

const bakeGuides: Printable = {
  kind: 'bake-guide',
  prints: ({ content: { kitchen }, guides, style, metrics }) =>
    guides.flatMap((guide) =>
      kitchen.paper.map((paper) =>
        bakeGuidePrint(guide, style, metrics, paper, kitchen.locale, siteOf(kitchen)),
      ),
    ),
};

const recipeCards: Printable = {
  kind: 'recipe-card',
  prints({ style, metrics, cardSizes: sizes, ...wanted }) {
    const { paper: papers, locale: lang } = wanted.content.kitchen;
    return recipeCardPrints(recipeCardViews(wanted), style, metrics, { sizes, papers, lang });
  },
};

const wallReferenceSheets: Printable = {
  kind: 'wall-reference',
  prints: ({ content, charts, style, metrics, mass, wallSizes }) =>
    wallPrints({ content, charts: charts.map(({ chart }) => chart), style, metrics, mass, wallSizes }),
};

const booklets: Printable = {
  kind: 'booklet',
  prints({ content, charts, finishing, style, metrics, mass }) {
    const { paper, locale } = content.kitchen;
    const view = bookletView({ content, charts: charts.map(({ chart }) => chart), finishing, mass });
    return paper.flatMap((sheet) => bookletPrints(view, style, metrics, sheet, locale));
  },
};

const cuttingGuides: Printable = {
  kind: 'cutting-guide',
  prints({ content, style, metrics }) {
    const { kitchen } = content;
    const view = portionsView(content);
    if (view.rows.length === 0) return [];
    return kitchen.paper.map((paper) =>
      cuttingGuidePrint(view, style, metrics, paper, kitchen.locale, siteOf(kitchen)),
    );
  },
};

const labels: Printable = {
  kind: 'label',
  prints({ content, charts, style, metrics }) {
    const wanted = charts.map(({ chart }) => chart.id);
    const { kitchen, label } = content;
    const common = { sizes: label.sizes, style, metrics, papers: kitchen.paper, lang: kitchen.locale };
    const made = sampleLabels(content)
      .filter(({ id }) => wanted.includes(id))
      .flatMap(({ view }) => (view === null ? [] : [{ view, copies: 1 }]));
    const ofOrders = orderLabels(content).flatMap(({ orderId, labels: all }) =>
      labelPrints({
        ...common,
        prefix: `orders/${orderId}-`,
        labels: all.flatMap(({ view, copies }) => (view === null ? [] : [{ view, copies }])),
      }),
    );
    return [...labelPrints({ ...common, prefix: '', labels: made }), ...ofOrders];
  },
};

export const PRINTABLES: readonly Printable[] = [
  tinCharts,
  bakeGuides,
  finishingSheets,
  recipeCards,
  booklets,
  wallReferenceSheets,
  cuttingGuides,
  labels,
  ...orderPrintables,
  liningTemplates,
];

/** The prints of an entry with a name lie in a folder of that name: 'tin-charts/my-four/…'. */
function inFolder(print: Print, name: string | null): Print {
  return name === null ? print : { ...print, path: print.path.replace('/', `/${name}/`) };
}

/** The prints of one kind in one house style; what `printables` leaves out is not made. */
export function printsOfKind(source: PrintSource, kind: string): Print[] {
  const { content, charts, finishing, style, metrics } = source;
  return PRINTABLES.filter((printable) => printable.kind === kind).flatMap((printable) =>
    wantedPrints(content, charts, kind).flatMap((wanted) => {
      // An entry of `printables` may leave out tins and finishes: its finishing chart is one of its own.
      const own = wanted.content === content ? finishing : finishingCharts(wanted.content);
      return printable
        .prints({ finishing: own, style, metrics, ...wanted })
        .map((print) => inFolder(print, wanted.name));
    }),
  );
}

/** All prints of a kitchen in one house style, in the order of the catalogue. */
export const printsOf = (source: PrintSource): Print[] =>
  PRINTABLES.flatMap(({ kind }) => printsOfKind(source, kind));
