/** The ingredients of one tin's block: a small table set in two columns, read downwards. */
import type { TinChartRow } from '../../views/tin-chart.types.ts';
import type { Surface, TextRun } from '../sheet/surface.ts';
import { alignedParts } from '../sheet/table/normalise.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import type { ChartContext } from './chart-context.ts';

const GAP_MM = 10;
const SPOONS_GAP_MM = 2.5;
const lineMm = typeScale.figure.leadingPt * MM_PER_PT;

export interface IngredientLine {
  name: string;
  text: string;
  spoons: string;
}

export const ingredientLines = (row: TinChartRow, { view }: ChartContext): IngredientLine[] =>
  view.columns.map((column, index) => ({
    name: column.name,
    text: row.amounts[index]?.figure.text ?? '',
    spoons: row.amounts[index]?.spoons ?? '',
  }));

const perColumn = (lines: IngredientLine[]): number => Math.ceil(lines.length / 2);

export const ingredientsHeightMm = (lines: IngredientLine[]): number => perColumn(lines) * lineMm;

type Place = Pick<TextRun, 'text' | 'xMm' | 'yMm'>;

function styled({ sheet }: ChartContext, type: TypeStyle, place: Place): TextRun {
  const { font, sizePt, colour, tabular } = type;
  return { ...place, font, sizePt, colour: sheet.inks[colour], ...(tabular ? { tabular } : {}) };
}

/** Edges that the amounts of one block share, from the right edge of their column. */
interface AmountEdges {
  pointMm: number;
  spoonsMm: number;
}

function amountEdges(context: ChartContext, lines: IngredientLine[]): AmountEdges {
  const { metrics } = context.sheet;
  const { figure, rowDetail } = typeScale;
  const width = (text: string) => metrics.widthMm(text, figure.font, figure.sizePt, true);
  const parts = lines.map((line) => alignedParts(line.text));
  const unitMm = metrics.widthMm(` ${context.labels.grams}`, rowDetail.font, rowDetail.sizePt);
  const pointMm = unitMm + Math.max(...parts.map(([, tail]) => width(tail)));
  const headMm = Math.max(...parts.map(([head]) => width(head)));
  return { pointMm, spoonsMm: pointMm + headMm + SPOONS_GAP_MM };
}

/** Spoons, amount and unit in columns of their own. */
function drawAmount(
  surface: Surface,
  context: ChartContext,
  line: IngredientLine,
  edges: AmountEdges,
  rightMm: number,
  yMm: number,
): void {
  const { metrics } = context.sheet;
  const { figure, rowDetail } = typeScale;
  const width = (text: string) => metrics.widthMm(text, figure.font, figure.sizePt, true);
  const numberXMm = rightMm - edges.pointMm - width(alignedParts(line.text)[0]);
  const spoonsMm = metrics.widthMm(line.spoons, rowDetail.font, rowDetail.sizePt);
  const unit = ` ${context.labels.grams}`;
  const draw = (type: TypeStyle, text: string, xMm: number) =>
    surface.text(styled(context, type, { text, xMm, yMm }));
  draw(figure, line.text, numberXMm);
  draw(rowDetail, unit, numberXMm + width(line.text));
  draw(rowDetail, line.spoons, rightMm - edges.spoonsMm - spoonsMm);
}

export function drawIngredients(
  surface: Surface,
  context: ChartContext,
  lines: IngredientLine[],
  box: { xMm: number; yMm: number; widthMm: number },
): void {
  const columnMm = (box.widthMm - GAP_MM) / 2;
  const rows = perColumn(lines);
  const columns = [lines.slice(0, rows), lines.slice(rows)].filter((column) => column.length > 0);
  const offset = baselineInLeadingMm(typeScale.figure, context.sheet);
  surface.within('Table', {}, () =>
    columns.forEach((column, place) => {
      const xMm = box.xMm + place * (columnMm + GAP_MM);
      const edges = amountEdges(context, column);
      column.forEach((line, index) => {
        const yMm = box.yMm + index * lineMm + offset;
        surface.within('TR', {}, () => {
          surface.within('TH', { scope: 'Row' }, () =>
            surface.text(styled(context, typeScale.ingredient, { text: line.name, xMm, yMm })),
          );
          surface.within('TD', {}, () => drawAmount(surface, context, line, edges, xMm + columnMm, yMm));
        });
      });
    }),
  );
}
