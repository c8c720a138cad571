/** Pages with running head and foot around a flow of sections. */
import { flow, type Section } from './flow.ts';
import type { SheetSize } from './paper.ts';
import { hairline } from './rules.ts';
import { drawRunningHead, HEAD_MM } from './running-head.ts';
import { drawScaleBar, type ScaleBar, scaleBarWidthMm } from './scale-bar.ts';
import type { SheetContext } from './sheet-context.ts';
import { shiftedSurface } from './shifted-surface.ts';
import type { PrintPage, Surface } from './surface.ts';
import { type TypeStyle, typeScale } from './type-scale.ts';

export interface Furniture {
  kitchenName: string;
  /** Repeated at the head from the second page on. */
  title: string;
  edition: string;
  pageText(page: number, pages: number): string;
  scaleBar?: ScaleBar;
}

const FOOT_MM = 10;

interface Line {
  text: string;
  type: TypeStyle;
}

/** Room left for the flow. */
export const frameOf = (size: SheetSize, { marginMm }: SheetContext) => ({
  xMm: marginMm.left,
  yMm: marginMm.top + HEAD_MM,
  widthMm: size.widthMm - marginMm.left - marginMm.right,
  heightMm: size.heightMm - marginMm.top - marginMm.bottom - HEAD_MM - FOOT_MM,
});

function drawEnd(
  surface: Surface,
  context: SheetContext,
  line: Line,
  edgeMm: number,
  yMm: number,
  share: number,
) {
  const { font, sizePt, colour, tabular } = line.type;
  const width = context.metrics.widthMm(line.text, font, sizePt, tabular);
  const xMm = edgeMm - width * share;
  surface.text({ text: line.text, xMm, yMm, font, sizePt, colour: context.inks[colour] });
}

function drawFurniture(
  surface: Surface,
  size: SheetSize,
  context: SheetContext,
  furniture: Furniture,
  page: number,
  pages: number,
): void {
  const { marginMm, metrics } = context;
  const left = marginMm.left;
  const right = size.widthMm - marginMm.right;
  const footMm = size.heightMm - marginMm.bottom - metrics.descentMm('text', typeScale.furniture.sizePt);
  const { kitchenName, title } = furniture;
  drawRunningHead(surface, context, { kitchenName, title: page > 1 ? title : null }, { left, right });
  hairline(surface, context, left, footMm - 5, right - left);
  drawEnd(surface, context, { text: furniture.edition, type: typeScale.furniture }, left, footMm, 0);
  const pageText = furniture.pageText(page, pages);
  drawEnd(surface, context, { text: pageText, type: typeScale.furniture }, right, footMm, 1);
  const bar = furniture.scaleBar;
  if (bar) drawScaleBar(surface, context, bar, (left + right - scaleBarWidthMm(bar, context)) / 2, footMm);
}

/** The whole document's pages. */
export function sheetPages(
  sections: Section[],
  size: SheetSize,
  context: SheetContext,
  furniture: Furniture,
): PrintPage[] {
  const frame = frameOf(size, context);
  const pages = flow(sections, frame, context);
  return pages.map((page, index) => ({
    ...size,
    draw(surface, origin) {
      const sheet = shiftedSurface(surface, origin);
      sheet.artifact(() => drawFurniture(sheet, size, context, furniture, index + 1, pages.length));
      page.draw(sheet, frame.xMm, frame.yMm);
    },
  }));
}
