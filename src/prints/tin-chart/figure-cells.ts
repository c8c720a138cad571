/** Cells with figures: eggs and batter strongest, ingredients with spoons beneath where the amount is small. */
import type { Amount, ChartColumn, EggFigures } from '../../views/tin-chart.types.ts';
import type { PrintLabels } from '../../wording/sheets/index.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { Cell, Column } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';

const headingWithUnit = (name: string, unit: string): Paragraph[] => [
  paragraph(name, typeScale.columnHead),
  paragraph(unit, typeScale.columnUnit),
];

export const figureColumn = (name: string, unit: string): Column => ({
  heading: headingWithUnit(name, unit),
  align: 'right',
});

export const ingredientColumn = (column: ChartColumn, labels: PrintLabels): Column =>
  figureColumn(column.name, labels.grams);

export const keyCell = (text: string, below: string[] = []): Cell => ({
  number: { text, type: typeScale.key },
  paragraphs: below.map((line) => paragraph(line, typeScale.figureNote)),
});

/** The whole count, the exact one beneath; where egg is weighed, its grams. */
export function eggCell(eggs: EggFigures | null, labels: PrintLabels): Cell {
  if (eggs === null) return {};
  return eggs.rule === 'weigh'
    ? keyCell(eggs.grams.text, [labels.beaten])
    : keyCell(eggs.whole.text, [eggs.exact.text]);
}

export const amountCell = (amount: Amount): Cell => ({
  number: { text: amount.figure.text, type: typeScale.figure },
  paragraphs: amount.spoons === null ? [] : [paragraph(amount.spoons, typeScale.figureNote)],
});
