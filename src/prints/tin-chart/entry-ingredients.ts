/**
 * The ingredients of one tin's block: a small table read downwards, in two columns of one width, or as wide as each
 * needs, or in one where names and amounts would meet.
 */
import type { TinChartRow } from '../../views/tin-chart.types.ts';
import type { Surface, TextRun } from '../sheet/surface.ts';
import { alignedParts } from '../sheet/table/normalise.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import type { ChartContext } from './chart-context.ts';

const GAP_MM = 10;
const LEAST_GAP_MM = 6;
const NAME_GAP_MM = 2;
/** Further from its name, an amount is hard to follow. */
const MOST_SINGLE_MM = 75;
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

/** Room that the widest line takes from the first letter of its name to its unit. */
function neededMm(context: ChartContext, lines: IngredientLine[]): number {
  const { metrics } = context.sheet;
  const { figure, ingredient, rowDetail } = typeScale;
  const edges = amountEdges(context, lines);
  const needed = lines.map(({ name, text, spoons }) => {
    const nameMm = metrics.widthMm(name, ingredient.font, ingredient.sizePt);
    const headMm = metrics.widthMm(alignedParts(text)[0], figure.font, figure.sizePt, true);
    const spoonsMm = metrics.widthMm(spoons, rowDetail.font, rowDetail.sizePt);
    const amountMm = spoons === '' ? edges.pointMm + headMm : edges.spoonsMm + spoonsMm;
    return nameMm + NAME_GAP_MM + amountMm;
  });
  return Math.max(0, ...needed);
}

interface IngredientColumn {
  lines: IngredientLine[];
  xMm: number;
  widthMm: number;
}

/** Set for a width. */
function columnsFor(context: ChartContext, lines: IngredientLine[], widthMm: number): IngredientColumn[] {
  const rows = Math.ceil(lines.length / 2);
  const [first, second] = [lines.slice(0, rows), lines.slice(rows)];
  const needs = [neededMm(context, first), neededMm(context, second)] as const;
  const evenMm = (widthMm - GAP_MM) / 2;
  if (Math.max(...needs) <= evenMm)
    return [
      { lines: first, xMm: 0, widthMm: evenMm },
      { lines: second, xMm: evenMm + GAP_MM, widthMm: evenMm },
    ];
  const spareMm = widthMm - LEAST_GAP_MM - needs[0] - needs[1];
  if (spareMm < 0) return [{ lines, xMm: 0, widthMm: Math.min(widthMm, MOST_SINGLE_MM) }];
  const firstMm = needs[0] + spareMm / 2;
  return [
    { lines: first, xMm: 0, widthMm: firstMm },
    { lines: second, xMm: firstMm + LEAST_GAP_MM, widthMm: needs[1] + spareMm / 2 },
  ];
}

export const ingredientsHeightMm = (
  context: ChartContext,
  lines: IngredientLine[],
  widthMm: number,
): number => Math.max(...columnsFor(context, lines, widthMm).map((column) => column.lines.length)) * lineMm;

export function drawIngredients(
  surface: Surface,
  context: ChartContext,
  lines: IngredientLine[],
  box: { xMm: number; yMm: number; widthMm: number },
): void {
  const offset = baselineInLeadingMm(typeScale.figure, context.sheet);
  surface.within('Table', {}, () => {
    for (const column of columnsFor(context, lines, box.widthMm)) {
      const xMm = box.xMm + column.xMm;
      const edges = amountEdges(context, column.lines);
      column.lines.forEach((line, index) => {
        const yMm = box.yMm + index * lineMm + offset;
        surface.within('TR', {}, () => {
          surface.within('TH', { scope: 'Row' }, () =>
            surface.text(styled(context, typeScale.ingredient, { text: line.name, xMm, yMm })),
          );
          const rightMm = xMm + column.widthMm;
          surface.within('TD', {}, () => drawAmount(surface, context, line, edges, rightMm, yMm));
        });
      });
    }
  });
}
