/** What the parts of a tin chart share. */
import type { TinChartView } from '../../views/tin-chart.types.ts';
import type { PrintLabels } from '../labels/print-labels.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';

export interface ChartContext {
  view: TinChartView;
  labels: PrintLabels;
  sheet: SheetContext;
  /** 1 : scale of all drawings. */
  scale: number;
  /** Address of a row's working page; null when the kitchen has no site. */
  workingUrl(rowId: string): string | null;
}
