/** The nutrition table of a label: names at the left, figures in columns at the right. */
import type { LabelNutrition } from '../../views/label.types.ts';
import { hairline } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import type { LabelType } from './label-type.ts';

export interface NutritionBlock {
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

const GAP_MM = 3;
const INDENT_MM = 2.5;
const RULE_MM = 0.6;

interface TableRow {
  name: string;
  indentMm: number;
  cells: string[];
  head: boolean;
}

function tableRows({ title, per100GHead, perPortionHead, rows }: LabelNutrition): TableRow[] {
  const heads = perPortionHead === '' ? [per100GHead] : [per100GHead, perPortionHead];
  return [
    { name: title, indentMm: 0, cells: heads, head: true },
    ...rows.map(({ name, within, per100GText, perPortionText }) => ({
      name,
      indentMm: within ? INDENT_MM : 0,
      cells: perPortionHead === '' ? [per100GText] : [per100GText, perPortionText],
      head: false,
    })),
  ];
}

/** Null where the table is wider than the label: then one line says the same. */
export function nutritionBlock(
  nutrition: LabelNutrition,
  type: LabelType,
  widthMm: number,
  context: SheetContext,
): NutritionBlock | null {
  const { font, sizePt, leadingPt } = type.text;
  const measure = (text: string, italic = false): number =>
    context.metrics.widthMm(text, italic ? 'textItalic' : font, sizePt, true);
  const rows = tableRows(nutrition);
  const columns =
    rows[0]?.cells.map((_, at) =>
      Math.max(...rows.map(({ cells, head }) => measure(cells[at] ?? '', head))),
    ) ?? [];
  const names = Math.max(...rows.map(({ name, indentMm, head }) => indentMm + measure(name, head)));
  const needed = names + columns.reduce((sum, column) => sum + GAP_MM + column, 0);
  if (needed > widthMm) return null;
  const leadingMm = leadingPt * MM_PER_PT;
  const rights = columns.map(
    (_, at) => widthMm - columns.slice(at + 1).reduce((sum, column) => sum + column + GAP_MM, 0),
  );
  const offset = baselineInLeadingMm(type.text, context);
  const drawCell = (surface: Surface, text: string, xMm: number, yMm: number, head: boolean): void =>
    surface.text({
      text,
      xMm,
      yMm,
      font: head ? 'textItalic' : font,
      sizePt,
      colour: context.inks.ink,
      tabular: true,
    });
  return {
    heightMm: rows.length * leadingMm + 2 * RULE_MM,
    draw(surface, xMm, yMm) {
      surface.artifact(() => hairline(surface, context, xMm, yMm + leadingMm + RULE_MM, widthMm));
      for (const [at, { name, indentMm, cells, head }] of rows.entries()) {
        const baseline = yMm + at * leadingMm + offset + (at > 0 ? 2 * RULE_MM : 0);
        surface.within('P', { key: `nutrition ${at}` }, () => {
          drawCell(surface, name, xMm + indentMm, baseline, head);
          for (const [column, text] of cells.entries())
            drawCell(surface, text, xMm + (rights[column] ?? widthMm) - measure(text, head), baseline, head);
        });
      }
    },
  };
}
