/** The ingredients of one tin's block: a small table set in two columns, read downwards. */
import type { TinChartRow } from '../../views/tin-chart.types.ts';
import type { Surface, TextRun } from '../sheet/surface.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import type { ChartContext } from './chart-context.ts';

const GAP_MM = 6;
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

/** Amount and unit, right edge at `rightMm`; spoons in front of them. */
function drawAmount(
  surface: Surface,
  context: ChartContext,
  line: IngredientLine,
  rightMm: number,
  yMm: number,
): void {
  const { metrics } = context.sheet;
  const unit = ` ${context.labels.grams}`;
  const { figure, rowDetail } = typeScale;
  const unitXMm = rightMm - metrics.widthMm(unit, rowDetail.font, rowDetail.sizePt);
  const numberXMm = unitXMm - metrics.widthMm(line.text, figure.font, figure.sizePt, true);
  const spoonsMm = metrics.widthMm(line.spoons, rowDetail.font, rowDetail.sizePt);
  surface.text(styled(context, figure, { text: line.text, xMm: numberXMm, yMm }));
  surface.text(styled(context, rowDetail, { text: unit, xMm: unitXMm, yMm }));
  const spoonsXMm = numberXMm - spoonsMm - SPOONS_GAP_MM;
  surface.text(styled(context, rowDetail, { text: line.spoons, xMm: spoonsXMm, yMm }));
}

export function drawIngredients(
  surface: Surface,
  context: ChartContext,
  lines: IngredientLine[],
  box: { xMm: number; yMm: number; widthMm: number },
): void {
  const columnMm = (box.widthMm - GAP_MM) / 2;
  const rows = perColumn(lines);
  const offset = baselineInLeadingMm(typeScale.figure, context.sheet);
  surface.within('Table', {}, () =>
    lines.forEach((line, index) => {
      const xMm = box.xMm + (index < rows ? 0 : columnMm + GAP_MM);
      const yMm = box.yMm + (index % rows) * lineMm + offset;
      surface.within('TR', {}, () => {
        surface.within('TH', { scope: 'Row' }, () =>
          surface.text(styled(context, typeScale.ingredient, { text: line.name, xMm, yMm })),
        );
        surface.within('TD', {}, () => drawAmount(surface, context, line, xMm + columnMm, yMm));
      });
    }),
  );
}
