/** The finishing chart's data files. In the CSV a record is a tin and a finish in one use; units in the header. */
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import { canonicalJson } from './canonical-json.ts';
import { type Cell, csvText } from './csv.ts';
import {
  amountFigures,
  type FinishingRecord,
  finishingChartData,
  finishingRecords,
  tinFigures,
} from './finishing-chart-data.ts';

interface Column {
  header: string;
  cell: (record: FinishingRecord) => Cell;
}

const TIN_FIGURES: Record<string, string> = {
  cake_height_mm: 'cake height (mm)',
  layers: 'layers (count)',
  coated_across_mm: 'coated across (mm)',
  coated_height_mm: 'coated height (mm)',
  board_mm: 'board (mm)',
  box_side_mm: 'box side (mm)',
  box_height_mm: 'box height (mm)',
  ribbon_mm: 'ribbon (mm)',
  paper_strip_length_mm: 'paper strip length (mm)',
  paper_strip_height_mm: 'paper strip height (mm)',
};
const AMOUNT_FIGURES: Record<string, string> = {
  needed_g: 'on the cake (g)',
  make_g: 'make (g)',
  buy_g: 'buy (g)',
  sheet_across_mm: 'sheet across (mm)',
  sheet_other_across_mm: 'sheet other way across (mm)',
};

const listed = (texts: string[]): string => texts.join('\n');

function figureColumns(
  names: Record<string, string>,
  figuresOf: (record: FinishingRecord) => ReturnType<typeof tinFigures>,
): Column[] {
  return Object.entries(names).flatMap(([key, header]) => [
    { header, cell: (record) => figuresOf(record)[key]?.value ?? null },
    { header: `${header} shown`, cell: (record) => figuresOf(record)[key]?.text ?? null },
  ]);
}

function partColumns(most: number): Column[] {
  return Array.from({ length: most }, (_, at) => at).flatMap((at): Column[] => [
    { header: `part ${at + 1}`, cell: ({ column }) => column.parts[at]?.id ?? null },
    { header: `part ${at + 1} name`, cell: ({ column }) => column.parts[at]?.name ?? null },
    { header: `part ${at + 1} (g)`, cell: ({ cell }) => cell.parts[at]?.figure.value ?? null },
    { header: `part ${at + 1} (g) shown`, cell: ({ cell }) => cell.parts[at]?.figure.text ?? null },
    { header: `part ${at + 1} beside`, cell: ({ cell }) => cell.parts[at]?.spoons ?? null },
  ]);
}

function chartColumns(view: FinishingChartView): Column[] {
  const whole: [string, Cell][] = [
    ['chart', view.id],
    ['title', view.title],
    ['kitchen', view.kitchenName],
    ['edition', view.edition],
  ];
  return whole.map(([header, value]) => ({ header, cell: () => value }));
}

/** Sentences about the whole chart stand on the first record of each tin only: they are long. */
function sentenceColumns(view: FinishingChartView): Column[] {
  const isFirst = ({ row, cell }: FinishingRecord): boolean => row.cells.find((one) => one !== null) === cell;
  const sentences: [string, string][] = [
    ['cautions', listed(view.cautions.map(({ code, text }) => `[${code}] ${text}`))],
    ['chart warnings', listed(view.warnings.map(({ code, message }) => `[${code}] ${message}`))],
    ['left out', listed(view.leftOut.map(({ id, text }) => `[${id}] ${text}`))],
  ];
  return sentences.map(([header, text]) => ({ header, cell: (record) => (isFirst(record) ? text : null) }));
}

/** The CSV file of a finishing chart. */
export function finishingChartCsv(view: FinishingChartView): string {
  const most = Math.max(0, ...view.columns.map(({ parts }) => parts.length));
  const columns: Column[] = [
    { header: 'tin', cell: ({ row }) => row.id },
    { header: 'name', cell: ({ row }) => row.tinName },
    { header: 'size', cell: ({ row }) => row.sizeText },
    { header: 'size in other units', cell: ({ row }) => row.otherSizeText },
    { header: 'owned', cell: ({ row }) => row.owned },
    { header: 'amount', cell: ({ column }) => column.id },
    { header: 'finish', cell: ({ column }) => column.finish.id },
    { header: 'finish name', cell: ({ column }) => column.finish.name },
    { header: 'kind', cell: ({ column }) => column.kind },
    { header: 'use', cell: ({ column }) => column.use },
    { header: 'use in words', cell: ({ column }) => column.useText },
    ...figureColumns(AMOUNT_FIGURES, ({ cell }) => amountFigures(cell)),
    { header: 'sheet form', cell: ({ cell }) => cell.sheet?.form ?? null },
    { header: 'sheet', cell: ({ cell }) => cell.sheet?.text ?? null },
    ...partColumns(most),
    ...figureColumns(TIN_FIGURES, ({ row }) => tinFigures(row)),
    ...chartColumns(view),
    ...sentenceColumns(view),
  ];
  return csvText(
    columns.map(({ header }) => header),
    finishingRecords(view).map((record) => columns.map(({ cell }) => cell(record))),
  );
}

/** The JSON file of a finishing chart. */
export function finishingChartJson(view: FinishingChartView): string {
  return canonicalJson(finishingChartData(view));
}
