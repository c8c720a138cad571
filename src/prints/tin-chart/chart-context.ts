/** What the parts of a tin chart share. */
import type { TinChartView } from '../../views/tin-chart.types.ts';
import type { PrintLabels } from '../../wording/sheets/index.ts';
import type { Words } from '../../wording/words.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Arrangement, DrawingField } from '../sheet/tin-drawing.ts';

/** How all drawings of a chart are set. */
export interface DrawingPlan {
  arrangement: Arrangement;
  field: DrawingField;
  /** 1 : scale. */
  scale: number;
}

export interface ChartContext {
  view: TinChartView;
  labels: PrintLabels;
  words: Words;
  sheet: SheetContext;
  drawings: DrawingPlan;
  /** Address of a row's working page; null when the kitchen has no site. */
  workingUrl(rowId: string): string | null;
}
