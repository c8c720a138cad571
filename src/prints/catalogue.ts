/**
 * Every printable there is, one entry each: from the content and its views to prints, in every paper that the
 * kitchen uses. The build, the tests of sheets and the list of downloads all go through this list.
 */
import type { Content } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { ChartViews } from '../views/chart-views.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { templatePrints } from './template-prints.ts';
import { tinChartPrint } from './tin-chart.ts';

/** What prints are made from. */
export interface PrintSource {
  content: Content;
  charts: readonly ChartViews[];
  style: HouseStyle;
  metrics: Metrics;
}

export interface Printable {
  /** As `printables:` in kitchen.yaml names it; its prints lie in the folder of the same name, in the plural. */
  kind: string;
  prints(source: PrintSource): Print[];
}

const tinCharts: Printable = {
  kind: 'tin-chart',
  prints({ content: { kitchen }, charts, style, metrics }) {
    const options = kitchen.siteUrl === undefined ? {} : { siteUrl: kitchen.siteUrl };
    return charts.flatMap(({ chart }) =>
      kitchen.paper.map((paper) => tinChartPrint(chart, style, metrics, paper, kitchen.locale, options)),
    );
  },
};

const liningTemplates: Printable = {
  kind: 'lining-template',
  prints: ({ content, metrics, style }) => templatePrints({ ...content, houseStyle: style }, metrics),
};

export const PRINTABLES: readonly Printable[] = [tinCharts, liningTemplates];

/** All prints of a kitchen in one house style, in the order of the catalogue. */
export function printsOf(source: PrintSource): Print[] {
  return PRINTABLES.flatMap((printable) => printable.prints(source));
}
