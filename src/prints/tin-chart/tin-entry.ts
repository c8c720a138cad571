/** One block per tin, for a mix with more ingredients than a row can hold at a readable size. */
import type { TinChartRow } from '../../views/tin-chart.types.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import { hairline } from '../sheet/rules.ts';
import type { Block } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import type { Drawing } from '../sheet/table/types.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { tinDrawing } from '../sheet/tin-drawing.ts';
import { typeScale } from '../sheet/type-scale.ts';
import type { ChartContext } from './chart-context.ts';
import { drawIngredients, ingredientLines, ingredientsHeightMm } from './entry-ingredients.ts';
import { fillingParagraphs, rowName, tinParagraphs } from './row-words.ts';

const PAD_MM = 3.4;
const LABEL_MM = 48;
const KEY_MM = 27;
const GAP_MM = 5;
const WORDS_GAP_MM = 1.4;

function eggParagraphs(row: TinChartRow, { labels }: ChartContext): Paragraph[] {
  const { eggs } = row;
  if (eggs === null) return [];
  return eggs.rule === 'weigh'
    ? [
        paragraph(`${labels.eggs}, ${labels.beaten}`, typeScale.columnUnit),
        paragraph(eggs.grams.text, typeScale.key),
      ]
    : [
        paragraph(labels.eggsExactly(eggs.exact.text), typeScale.columnUnit),
        paragraph(eggs.whole.text, typeScale.key),
      ];
}

const keyParagraphs = (row: TinChartRow, context: ChartContext): Paragraph[] => [
  ...eggParagraphs(row, context),
  paragraph(`${context.labels.batter}, ${context.labels.grams}`, typeScale.columnUnit),
  paragraph(row.batter.text, typeScale.key),
];

/** What stands in the block, measured for a width. */
function setEntry(row: TinChartRow, context: ChartContext, widthMm: number) {
  const { sheet, drawings } = context;
  const tableXMm = LABEL_MM + KEY_MM + 2 * GAP_MM;
  const drawing = tinDrawing(row.picture, drawings.scale, drawings.arrangement, sheet);
  const label = setText(tinParagraphs(row, context), LABEL_MM, sheet);
  const key = setText(keyParagraphs(row, context), KEY_MM, sheet);
  const ingredients = ingredientLines(row, context);
  const tableMm = ingredientsHeightMm(ingredients);
  const words = setText(fillingParagraphs(row, context), widthMm - tableXMm, sheet);
  const left = label.heightMm + (drawing ? WORDS_GAP_MM + drawing.heightMm : 0);
  const right = tableMm + WORDS_GAP_MM + words.heightMm;
  const heightMm = Math.max(left, key.heightMm, right) + 2 * PAD_MM;
  return { tableXMm, drawing, label, key, ingredients, tableMm, words, heightMm };
}

function drawFigure(surface: Surface, drawing: Drawing, xMm: number, yMm: number): void {
  const box = { xMm, yMm, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
  surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, xMm, yMm));
}

/** The tin at the left, its eggs and batter strong beside it, the ingredients at the right, words beneath. */
export const tinEntry =
  (row: TinChartRow, context: ChartContext, first: boolean): Block =>
  (widthMm, sheet) => {
    const { tableXMm, drawing, label, key, ingredients, tableMm, words, heightMm } = setEntry(
      row,
      context,
      widthMm,
    );
    const draw = (surface: Surface, xMm: number, yMm: number) => {
      const top = yMm + PAD_MM;
      surface.anchor(row.id, { xMm, yMm });
      surface.bookmark(rowName(row, context), 2, { xMm, yMm });
      surface.artifact(() => hairline(surface, sheet, xMm, yMm, widthMm));
      const name = () => drawText(surface, sheet, label, xMm, top);
      const url = context.workingUrl(row.id);
      const box = { xMm, yMm: top, widthMm: LABEL_MM, heightMm: label.heightMm };
      surface.within('H2', {}, () =>
        url ? surface.link(box, { url }, context.labels.working(rowName(row, context)), name) : name(),
      );
      if (drawing) drawFigure(surface, drawing, xMm, top + label.heightMm + WORDS_GAP_MM);
      surface.within('P', {}, () => drawText(surface, sheet, key, xMm + LABEL_MM + GAP_MM, top));
      drawIngredients(surface, context, ingredients, {
        xMm: xMm + tableXMm,
        yMm: top,
        widthMm: widthMm - tableXMm,
      });
      surface.within('P', {}, () =>
        drawText(surface, sheet, words, xMm + tableXMm, top + tableMm + WORDS_GAP_MM),
      );
    };
    return [{ heightMm, spaceMm: first ? 4 : 0, keepWithNext: false, draw }];
  };
