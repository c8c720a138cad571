/** A few paragraphs set in a box: how high they stand, and drawing them with any alignment. */
import { breakLines, type Line, type Paragraph } from './lines.ts';
import { oncePerMetrics } from './remembered.ts';
import type { SheetContext } from './sheet-context.ts';
import type { Surface } from './surface.ts';
import type { TypeStyle } from './type-scale.ts';
import { MM_PER_PT } from './units.ts';

export type Alignment = 'left' | 'right' | 'centre';

interface SetLine {
  line: Line;
  type: TypeStyle;
  /** From the block's top. */
  baselineMm: number;
}

export interface SetText {
  heightMm: number;
  /** Of the first line; 0 without text. */
  firstBaselineMm: number;
  widthMm: number;
  lines: SetLine[];
}

/** Every line asks, and font libraries look a font's tables up each time. */
const baselinesFor = oncePerMetrics(() => new WeakMap<TypeStyle, number>());

/** The baseline stands so that ascender and descender share the leading evenly. */
export function baselineInLeadingMm(type: TypeStyle, { metrics }: SheetContext): number {
  const ofTypes = baselinesFor(metrics);
  const known = ofTypes.get(type);
  if (known !== undefined) return known;
  const ascent = metrics.ascentMm(type.font, type.sizePt);
  const descent = metrics.descentMm(type.font, type.sizePt);
  const fresh = (type.leadingPt * MM_PER_PT - ascent - descent) / 2 + ascent;
  ofTypes.set(type, fresh);
  return fresh;
}

export function setText(paragraphs: Paragraph[], widthMm: number, context: SheetContext): SetText {
  let y = 0;
  const lines: SetLine[] = [];
  for (const text of paragraphs) {
    const offset = baselineInLeadingMm(text.type, context);
    for (const line of breakLines(text, widthMm, context.metrics)) {
      lines.push({ line, type: text.type, baselineMm: y + offset });
      y += text.type.leadingPt * MM_PER_PT;
    }
  }
  return { heightMm: y, firstBaselineMm: lines[0]?.baselineMm ?? 0, widthMm, lines };
}

export function drawLine(
  surface: Surface,
  context: SheetContext,
  line: Line,
  type: TypeStyle,
  xMm: number,
  yMm: number,
): void {
  for (const piece of line.pieces)
    surface.text({
      text: piece.text,
      xMm: xMm + piece.xMm,
      yMm,
      font: piece.font,
      sizePt: type.sizePt,
      colour: context.inks[piece.colour],
      ...(type.tabular ? { tabular: true } : {}),
    });
}

const indent = (align: Alignment, spareMm: number): number =>
  align === 'left' ? 0 : align === 'right' ? spareMm : spareMm / 2;

/** Draws set text with its top left corner at (x, y). */
export function drawText(
  surface: Surface,
  context: SheetContext,
  text: SetText,
  xMm: number,
  yMm: number,
  align: Alignment = 'left',
): void {
  for (const { line, type, baselineMm } of text.lines)
    drawLine(
      surface,
      context,
      line,
      type,
      xMm + indent(align, text.widthMm - line.widthMm),
      yMm + baselineMm,
    );
}
