/** The chart as one table: a row per tin, a column per ingredient. */
import type { TinChartRow } from '../../views/tin-chart.types.ts';
import { paragraph } from '../sheet/lines.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import { tinDrawing } from '../sheet/tin-drawing.ts';
import { typeScale } from '../sheet/type-scale.ts';
import type { ChartContext } from './chart-context.ts';
import { amountCell, eggCell, figureColumn, ingredientColumn, keyCell } from './figure-cells.ts';
import { fillingParagraphs, rowName, tinParagraphs } from './row-words.ts';

function tinCell(row: TinChartRow, context: ChartContext): Cell {
  const { drawings } = context;
  const drawing = tinDrawing(row.picture, drawings.scale, drawings.arrangement, context.sheet);
  const url = context.workingUrl(row.id);
  return {
    heading: true,
    ...(drawing ? { drawing } : {}),
    paragraphs: tinParagraphs(row, context),
    ...(url ? { link: { url, description: context.labels.working(rowName(row, context)) } } : {}),
  };
}

function columnsOf({ view, labels, drawings }: ChartContext): Column[] {
  const eggs = view.rows.some((row) => row.eggs !== null);
  const narrow = drawings.arrangement === 'below';
  return [
    {
      heading: [paragraph(labels.tin, typeScale.columnHead)],
      align: 'left',
      drawingMm: drawings.field.widthMm,
      narrowestMm: drawings.field.widthMm + (narrow ? 38 : 43),
      widestMm: drawings.field.widthMm + 58,
    },
    ...(eggs ? [figureColumn(labels.eggs, labels.exactBelow)] : []),
    figureColumn(labels.batter, labels.grams),
    ...view.columns.map((column) => ingredientColumn(column, labels)),
    {
      heading: [paragraph(labels.filling, typeScale.columnHead)],
      align: 'left',
      narrowestMm: narrow ? 38 : 46,
      widestMm: 80,
    },
  ];
}

export function chartTable(context: ChartContext): TableSpec {
  const { view, labels } = context;
  const eggs = view.rows.some((row) => row.eggs !== null);
  return {
    key: 'chart',
    columns: columnsOf(context),
    zebra: true,
    rows: view.rows.map((row) => ({
      anchor: row.id,
      cells: [
        tinCell(row, context),
        ...(eggs ? [eggCell(row.eggs, labels)] : []),
        keyCell(row.batter.text),
        ...row.amounts.map(amountCell),
        { paragraphs: fillingParagraphs(row, context) },
      ],
    })),
  };
}
