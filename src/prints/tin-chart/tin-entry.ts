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
const LABEL_MM = 52;
const BATTER_XMM = 28;
const GAP_MM = 7;
const WORDS_GAP_MM = 1.4;
const DRAWING_GAP_MM = 2;

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

const batterParagraphs = (row: TinChartRow, { labels }: ChartContext): Paragraph[] => [
  paragraph(`${labels.batter}, ${labels.grams}`, typeScale.columnUnit),
  paragraph(row.batter.text, typeScale.key),
];

/** What stands in the block, measured for a width. */
function setEntry(row: TinChartRow, context: ChartContext, widthMm: number) {
  const { sheet, drawings } = context;
  const tableXMm = LABEL_MM + GAP_MM;
  const drawing = tinDrawing(row.picture, drawings.scale, drawings.arrangement, sheet);
  const label = setText(tinParagraphs(row, context), LABEL_MM, sheet);
  const eggs = setText(eggParagraphs(row, context), BATTER_XMM, sheet);
  const batter = setText(batterParagraphs(row, context), LABEL_MM - BATTER_XMM, sheet);
  const ingredients = ingredientLines(row, context);
  const tableMm = ingredientsHeightMm(context, ingredients, widthMm - tableXMm);
  const words = setText(fillingParagraphs(row, context), widthMm - tableXMm, sheet);
  const keyYMm = label.heightMm + WORDS_GAP_MM;
  const drawingYMm = keyYMm + batter.heightMm + DRAWING_GAP_MM;
  const left = drawing ? drawingYMm + drawing.heightMm : keyYMm + batter.heightMm;
  const right = tableMm + WORDS_GAP_MM + words.heightMm;
  const heightMm = Math.max(left, right) + 2 * PAD_MM;
  return {
    tableXMm,
    drawing,
    drawingYMm,
    label,
    eggs,
    batter,
    keyYMm,
    ingredients,
    tableMm,
    words,
    heightMm,
  };
}

type SetEntry = ReturnType<typeof setEntry>;

function drawFigure(surface: Surface, drawing: Drawing, xMm: number, yMm: number): void {
  const box = { xMm, yMm, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
  surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, xMm, yMm));
}

function drawLabel(
  surface: Surface,
  context: ChartContext,
  row: TinChartRow,
  entry: SetEntry,
  xMm: number,
  yMm: number,
): void {
  const { sheet, labels } = context;
  const url = context.workingUrl(row.id);
  const name = () => drawText(surface, sheet, entry.label, xMm, yMm);
  const box = { xMm, yMm, widthMm: LABEL_MM, heightMm: entry.label.heightMm };
  surface.within('H2', {}, () =>
    url ? surface.link(box, { url }, labels.working(rowName(row, context)), name) : name(),
  );
  const keyYMm = yMm + entry.keyYMm;
  if (row.eggs) surface.within('P', {}, () => drawText(surface, sheet, entry.eggs, xMm, keyYMm));
  const batterXMm = row.eggs ? xMm + BATTER_XMM : xMm;
  surface.within('P', {}, () => drawText(surface, sheet, entry.batter, batterXMm, keyYMm));
  if (entry.drawing) drawFigure(surface, entry.drawing, xMm, yMm + entry.drawingYMm);
}

/** The tin with its eggs and batter at the left, the ingredients at the right, words beneath them. */
export const tinEntry =
  (row: TinChartRow, context: ChartContext, first: boolean): Block =>
  (widthMm, sheet) => {
    const entry = setEntry(row, context, widthMm);
    const draw = (surface: Surface, xMm: number, yMm: number) => {
      const top = yMm + PAD_MM;
      surface.anchor(row.id, { xMm, yMm });
      surface.bookmark(rowName(row, context), 2, { xMm, yMm });
      surface.artifact(() => hairline(surface, sheet, xMm, yMm, widthMm));
      drawLabel(surface, context, row, entry, xMm, top);
      const right = { xMm: xMm + entry.tableXMm, yMm: top, widthMm: widthMm - entry.tableXMm };
      drawIngredients(surface, context, entry.ingredients, right);
      const wordsYMm = top + entry.tableMm + WORDS_GAP_MM;
      surface.within('P', {}, () => drawText(surface, sheet, entry.words, right.xMm, wordsYMm));
    };
    return [{ heightMm: entry.heightMm, spaceMm: first ? 4 : 0, keepWithNext: false, draw }];
  };
