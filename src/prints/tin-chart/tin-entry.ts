/** One block per tin, for a mix with more ingredients than a row can hold at a readable size. */
import type { TinChartRow } from '../../views/tin-chart.types.ts';
import { paragraph } from '../sheet/lines.ts';
import { hairline } from '../sheet/rules.ts';
import type { Block } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { baselineInLeadingMm, drawText, type SetText, setText } from '../sheet/text-block.ts';
import { tinDrawing } from '../sheet/tin-drawing.ts';
import { typeScale } from '../sheet/type-scale.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import type { ChartContext } from './chart-context.ts';
import { drawingField } from './chart-table.ts';
import { fillingParagraphs, rowName, tinParagraphs } from './row-words.ts';

const PAD_MM = 3.2;
const LABEL_MM = 62;
const KEY_MM = 25;
const GAP_MM = 6;
const ROW_PT = 15.5;

interface Ingredient {
  name: string;
  text: string;
  spoons: string;
}

const ingredientsOf = (row: TinChartRow, { view }: ChartContext): Ingredient[] =>
  view.columns.map((column, index) => ({
    name: column.name,
    text: row.amounts[index]?.figure.text ?? '',
    spoons: row.amounts[index]?.spoons ?? '',
  }));

/** Two columns, read downwards; one table all the same. */
function drawIngredients(
  surface: Surface,
  context: ChartContext,
  ingredients: Ingredient[],
  xMm: number,
  yMm: number,
  widthMm: number,
): void {
  const { inks, metrics } = context.sheet;
  const perColumn = Math.ceil(ingredients.length / 2);
  const columnMm = (widthMm - GAP_MM) / 2;
  const rowMm = ROW_PT * MM_PER_PT;
  const offset = baselineInLeadingMm({ ...typeScale.figure, leadingPt: ROW_PT }, context.sheet);
  const drawOne = ({ name, text, spoons }: Ingredient, index: number) => {
    const x = xMm + (index < perColumn ? 0 : columnMm + GAP_MM);
    const y = yMm + (index % perColumn) * rowMm + offset;
    const unit = ` ${context.labels.grams}`;
    const { sizePt } = typeScale.figure;
    const unitMm = metrics.widthMm(unit, 'text', 10);
    const numberMm = metrics.widthMm(text, 'text', sizePt, true);
    const spoonsMm = metrics.widthMm(spoons, 'text', 9);
    surface.within('TR', {}, () => {
      surface.within('TH', { scope: 'Row' }, () =>
        surface.text({ text: name, xMm: x, yMm: y, font: 'text', sizePt: 10, colour: inks.ink }),
      );
      surface.within('TD', {}, () => {
        const right = x + columnMm;
        surface.text({
          text,
          xMm: right - unitMm - numberMm,
          yMm: y,
          font: 'text',
          sizePt,
          colour: inks.ink,
          tabular: true,
        });
        surface.text({
          text: unit,
          xMm: right - unitMm,
          yMm: y,
          font: 'text',
          sizePt: 10,
          colour: inks.quietInk,
        });
        if (spoons !== '')
          surface.text({
            text: spoons,
            xMm: right - unitMm - numberMm - spoonsMm - 3,
            yMm: y,
            font: 'text',
            sizePt: 9,
            colour: inks.quietInk,
          });
      });
    });
  };
  surface.within('Table', {}, () => ingredients.forEach(drawOne));
}

function keyText(row: TinChartRow, context: ChartContext): SetText {
  const { labels } = context;
  const eggs = row.eggs;
  const eggLines =
    eggs === null
      ? []
      : [
          paragraph(labels.eggs, typeScale.columnUnit),
          {
            spans: [
              { text: eggs.rule === 'weigh' ? eggs.grams.text : eggs.whole.text },
              {
                text: ` ${eggs.rule === 'weigh' ? labels.beaten : `(${labels.exact(eggs.exact.text)})`}`,
                font: 'text' as const,
                colour: 'quietInk' as const,
              },
            ],
            type: typeScale.key,
          },
        ];
  return setText(
    [
      ...eggLines,
      paragraph(`${labels.batter}, ${labels.grams}`, typeScale.columnUnit),
      paragraph(row.batter.text, typeScale.key),
    ],
    KEY_MM,
    context.sheet,
  );
}

/** The tin at the left, its eggs and batter strong beside it, the ingredients at the right, words beneath. */
export const tinEntry =
  (row: TinChartRow, context: ChartContext): Block =>
  (widthMm, sheet) => {
    const drawing = tinDrawing(row.picture, context.scale, sheet);
    const textXMm = drawingField.widthMm + 3;
    const label = setText(tinParagraphs(row, context), LABEL_MM - textXMm, sheet);
    const key = keyText(row, context);
    const ingredients = ingredientsOf(row, context);
    const tableXMm = LABEL_MM + KEY_MM + GAP_MM;
    const tableMm = Math.ceil(ingredients.length / 2) * ROW_PT * MM_PER_PT;
    const words = setText(fillingParagraphs(row, context), widthMm - tableXMm, sheet);
    const right = tableMm + 1.2 + words.heightMm;
    const heightMm = Math.max(label.heightMm, key.heightMm, drawing?.heightMm ?? 0, right) + 2 * PAD_MM;
    return [
      {
        heightMm,
        spaceMm: 0,
        keepWithNext: false,
        draw(surface, xMm, yMm) {
          const top = yMm + PAD_MM;
          surface.anchor(row.id, { xMm, yMm });
          surface.bookmark(rowName(row, context), 2, { xMm, yMm });
          surface.artifact(() => hairline(surface, sheet, xMm, yMm, widthMm));
          if (drawing) {
            const x = xMm + (drawingField.widthMm - drawing.widthMm) / 2;
            const box = { xMm: x, yMm: top, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
            surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, x, top));
          }
          surface.within('H3', {}, () => drawText(surface, sheet, label, xMm + textXMm, top));
          surface.within('P', {}, () => drawText(surface, sheet, key, xMm + LABEL_MM, top));
          drawIngredients(surface, context, ingredients, xMm + tableXMm, top, widthMm - tableXMm);
          surface.within('P', {}, () => drawText(surface, sheet, words, xMm + tableXMm, top + tableMm + 1.2));
        },
      },
    ];
  };
