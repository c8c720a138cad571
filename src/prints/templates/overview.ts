/** The first sheet, in words: what to cut and on which sheets, how to print and join, notes and cautions. */
import type { LiningTemplateView } from '../../views/lining-template.types.ts';
import type { TemplateLabels } from '../../wording/lining-template/sheet-words.ts';
import { caution, heading, list, textParagraph } from '../sheet/blocks.ts';
import { type FlowedPage, flow } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { table } from '../sheet/table/table.ts';
import type { Column, Drawing, TableSpec } from '../sheet/table/types.ts';
import { commonScale, tinDrawing } from '../sheet/tin-drawing.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { assemblyMap } from './assembly-map.ts';
import type { LaidPiece } from './cut-into-parts.ts';
import type { TemplateLayout } from './lay-out.ts';
import { foldText } from './part-legend.ts';
import type { TemplateFrame } from './template-sheet.ts';

const MAP_FIELD = { widthMm: 36, heightMm: 15 };
const TIN_FIELD = { widthMm: 62, heightMm: 26 };

function sheetsOf(laid: LaidPiece, { sheets }: TemplateLayout, firstSheet: number): number[] {
  return sheets.flatMap(({ items }, index) =>
    items.some(({ item }) => item.laid === laid) ? [index + firstSheet] : [],
  );
}

function mapDrawing(laid: LaidPiece, labels: TemplateLabels, context: SheetContext): Drawing {
  const map = assemblyMap(laid, null, MAP_FIELD, context);
  const names = laid.parts.flatMap(({ joints }) => joints.map(({ name }) => name));
  return { ...map, alt: labels.figure(laid.piece.name, '', [...new Set(names)]) };
}

/** Names of many parts need a wider field. */
const fieldMm = (maps: readonly Drawing[]): number =>
  Math.max(MAP_FIELD.widthMm, ...maps.map(({ widthMm }) => widthMm));

const column = (heading: string, narrowestMm: number, widestMm: number): Column => ({
  heading: [paragraph(heading, typeScale.columnHead)],
  align: 'left',
  narrowestMm,
  widestMm,
});

function piecesTable(
  layout: TemplateLayout,
  firstSheet: number,
  labels: TemplateLabels,
  context: SheetContext,
): TableSpec {
  const quiet: TypeStyle = typeScale.rowDetail;
  const maps = layout.pieces.map((laid) => mapDrawing(laid, labels, context));
  const drawingMm = fieldMm(maps);
  return {
    key: 'pieces',
    paddingMm: 1.5,
    columns: [
      { ...column(labels.piece, drawingMm + 36, drawingMm + 50), drawingMm },
      column(labels.size, 50, 78),
      column(labels.sheets, 16, 24),
    ],
    rows: layout.pieces.map((laid, index) => {
      const drawing = maps[index];
      const sheets = sheetsOf(laid, layout, firstSheet);
      const first = sheets[0] ?? firstSheet;
      const { name, cutText, sizeText } = laid.piece;
      return {
        cells: [
          {
            heading: true,
            ...(drawing ? { drawing } : {}),
            paragraphs: [paragraph(name, typeScale.rowName), paragraph(cutText, quiet)],
          },
          { paragraphs: [paragraph(sizeText, typeScale.ingredient)] },
          { paragraphs: [paragraph(labels.sheetList(first, sheets.at(-1) ?? first), typeScale.ingredient)] },
        ],
      };
    }),
  };
}

const COLUMN_GAP_MM = 8;

/** Two columns side by side, the left read first; they share a page. */
const columns =
  (left: Block[], right: Block[]): Block =>
  (widthMm, context) => {
    const columnMm = (widthMm - COLUMN_GAP_MM) / 2;
    const set = [left, right].map((blocks) => stacked(blocks.flatMap((block) => block(columnMm, context))));
    return [
      {
        heightMm: Math.max(0, ...set.map(({ heightMm }) => heightMm)),
        spaceMm: 5,
        keepWithNext: false,
        draw(surface, xMm, yMm) {
          for (const [index, column] of set.entries())
            column.draw(surface, xMm + index * (columnMm + COLUMN_GAP_MM), yMm);
        },
      },
    ];
  };

function stacked(strips: Strip[]) {
  let y = 0;
  const placed = strips.map((strip, index) => {
    y += index === 0 ? 0 : strip.spaceMm;
    const at = { strip, yMm: y };
    y += strip.heightMm;
    return at;
  });
  return {
    heightMm: y,
    draw(surface: Surface, xMm: number, yMm: number) {
      for (const at of placed) at.strip.draw(surface, xMm, yMm + at.yMm);
    },
  };
}

/** Title and summary, the tin itself at their right. */
const masthead =
  (view: LiningTemplateView, left: Block[]): Block =>
  (widthMm, context) => {
    const scale = commonScale([view.picture], TIN_FIELD, 'beside');
    const drawing = tinDrawing(view.picture, scale, 'beside', context);
    const drawingMm = drawing === null ? 0 : drawing.widthMm + COLUMN_GAP_MM;
    const words = stacked(left.flatMap((block) => block(widthMm - drawingMm, context)));
    return [
      {
        heightMm: Math.max(words.heightMm, drawing?.heightMm ?? 0),
        spaceMm: 0,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          words.draw(surface, xMm, yMm);
          if (drawing === null) return;
          const at = { xMm: xMm + widthMm - drawing.widthMm, yMm };
          const box = { ...at, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
          const draw = () => drawing.draw(surface, at.xMm, at.yMm);
          surface.within('Figure', { alt: drawing.alt, box }, draw);
        },
      },
    ];
  };

function blocksOf(
  view: LiningTemplateView,
  layout: TemplateLayout,
  firstSheet: number,
  labels: TemplateLabels,
  context: SheetContext,
): Block[] {
  const { steps } = labels;
  const tiled = layout.pieces.some(({ parts }) => parts.length > 1);
  const folds = layout.pieces.some((laid) => foldText(laid, labels) !== null);
  const head = (text: string) => heading(text, { level: 2, type: typeScale.entry });
  const howTo = [steps.print, steps.lines, ...(tiled ? [steps.join] : []), ...(folds ? [steps.fold] : [])];
  const type = typeScale.rowNote;
  const title: TypeStyle = { ...typeScale.title, sizePt: 20, leadingPt: 24 };
  const cautions = view.cautions.map(({ text }) => caution(labels.caution, text, type));
  const papers = [head(labels.papers), list('notes', view.notes, type)];
  const top = masthead(view, [
    heading(view.title, { level: 1, type: title, bookmark: view.title }),
    textParagraph('summary', paragraph(view.summary, typeScale.lead), 0.5),
  ]);
  if (layout.pieces.length === 0) return [top, ...papers, ...cautions];
  return [
    top,
    table(piecesTable(layout, firstSheet, labels, context)),
    columns(
      [head(labels.howTo), list('how-to', howTo, type), ...cautions.slice(0, 1)],
      [...papers, ...cautions.slice(1)],
    ),
  ];
}

/** The pages in words that stand before the patterns. */
export function overviewPages(
  view: LiningTemplateView,
  layout: TemplateLayout,
  frame: TemplateFrame,
  labels: TemplateLabels,
  context: SheetContext,
): FlowedPage[] {
  const pagesFrom = (firstSheet: number) =>
    flow([{ key: 'overview', blocks: blocksOf(view, layout, firstSheet, labels, context) }], frame, context);
  // Sheet numbers depend on how many pages the words take, and that not on the numbers.
  return pagesFrom(pagesFrom(2).length + 1);
}
