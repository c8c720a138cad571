/** A method as blocks of the flow: headings, paragraphs, cautions with their bar, and numbered or plain items. */
import type { FontRole } from '../../domain/house-style.ts';
import type { MethodItem, MethodPiece, MethodSpan } from '../../views/method-text.types.ts';
import { heading } from './blocks.ts';
import { type Paragraph, paragraph, type Span } from './lines.ts';
import { rectangle } from './rules.ts';
import type { SheetContext } from './sheet-context.ts';
import { type Block, keptTogether, type Strip, withoutLonely } from './strip.ts';
import type { StructureTag, Surface } from './surface.ts';
import { drawLine, drawText, setText } from './text-block.ts';
import type { TypeStyle } from './type-scale.ts';
import { MM_PER_PT } from './units.ts';

export interface MethodLook {
  heading: TypeStyle;
  body: TypeStyle;
  /** Space above a paragraph, and above an item. */
  gapMm: number;
  headingGapMm: number;
  level: 2 | 3;
  /** No paragraph or item is divided over two pages or columns. */
  whole?: boolean;
}

const fonts: Record<MethodSpan['emphasis'], FontRole> = {
  none: 'text',
  strong: 'textBold',
  italic: 'textItalic',
};

function spansOf(spans: readonly MethodSpan[], caution: boolean): Span[] {
  return spans.map(({ text, emphasis }, index) => ({
    text,
    font: fonts[emphasis],
    ...(caution && index === 0 ? { colour: 'caution' as const } : {}),
  }));
}

type Wrap = (surface: Surface, body: () => void) => void;

interface Lines {
  text: Paragraph;
  indentMm: number;
  gapMm: number;
  whole: boolean;
  wrap: Wrap;
  /** Drawn beside each line: a caution's bar. */
  beside?: (surface: Surface, xMm: number, yMm: number, heightMm: number) => void;
}

function lineStrips(
  { text, indentMm, gapMm, whole, wrap, beside }: Lines,
  widthMm: number,
  context: SheetContext,
) {
  const set = setText([text], widthMm - indentMm, context);
  const heightMm = text.type.leadingPt * MM_PER_PT;
  const strips = set.lines.map(
    ({ line }, index): Strip => ({
      heightMm,
      spaceMm: index === 0 ? gapMm : 0,
      keepWithNext: false,
      draw(surface, xMm, yMm) {
        beside?.(surface, xMm, yMm, heightMm);
        wrap(surface, () =>
          drawLine(surface, context, line, text.type, xMm + indentMm, yMm + set.firstBaselineMm),
        );
      },
    }),
  );
  return whole ? keptTogether(strips) : withoutLonely(strips);
}

const BAR_MM = 0.7;
const CAUTION_INDENT_MM = 2.6;

function paragraphBlock(
  key: string,
  spans: readonly MethodSpan[],
  caution: boolean,
  look: MethodLook,
): Block {
  return (widthMm, context) =>
    lineStrips(
      {
        text: { spans: spansOf(spans, caution), type: look.body },
        indentMm: caution ? CAUTION_INDENT_MM : 0,
        gapMm: look.gapMm,
        whole: look.whole ?? false,
        wrap: (surface, body) => surface.within('P', { key }, body),
        ...(caution
          ? {
              beside: (surface, xMm, yMm, heightMm) =>
                surface.artifact(() =>
                  surface.path(rectangle(xMm, yMm, BAR_MM, heightMm), { fill: context.inks.caution }),
                ),
            }
          : {}),
      },
      widthMm,
      context,
    );
}

function itemBlock(key: string, item: MethodItem, look: MethodLook): Block {
  return (widthMm, context) => {
    const indentMm = look.body.sizePt * MM_PER_PT * (item.number === null ? 1.1 : 1.5);
    const inItem = (surface: Surface, tag: StructureTag, body: () => void) =>
      surface.within('L', { key: `list ${item.list}` }, () =>
        surface.within('LI', { key }, () => surface.within(tag, { key: 'part' }, body)),
      );
    const text: Paragraph = { spans: spansOf(item.spans, false), type: look.body };
    const lines = lineStrips(
      {
        text,
        indentMm,
        gapMm: look.gapMm * 0.7,
        whole: look.whole ?? false,
        wrap: (surface, body) => inItem(surface, 'LBody', body),
      },
      widthMm,
      context,
    );
    const [first, ...rest] = lines;
    if (!first) return [];
    const markType: TypeStyle = { ...look.body, font: 'textBold', colour: 'accent' };
    const mark = setText([paragraph(item.number ?? '–', markType)], indentMm, context);
    const marked: Strip = {
      ...first,
      draw(surface, xMm, yMm) {
        inItem(surface, 'Lbl', () => drawText(surface, context, mark, xMm, yMm));
        first.draw(surface, xMm, yMm);
      },
    };
    return [marked, ...rest];
  };
}

function pieceBlock(own: string, piece: MethodPiece, look: MethodLook): Block {
  switch (piece.kind) {
    case 'heading':
      return heading(piece.text, { level: look.level, type: look.heading, spaceMm: look.headingGapMm });
    case 'paragraph':
      return paragraphBlock(own, piece.spans, piece.caution, look);
    case 'item':
      return itemBlock(own, piece, look);
  }
}

/** Blocks of a method, each heading close to what it heads; `key` keeps its elements apart from others in the same section. */
export function methodBlocks(key: string, pieces: readonly MethodPiece[], look: MethodLook): Block[] {
  return pieces.map((piece, index) => {
    const own = pieces[index - 1]?.kind === 'heading' ? { ...look, gapMm: 0 } : look;
    return pieceBlock(`${key} ${index}`, piece, own);
  });
}

/** A caution in the method's own look. */
export const cautionBlock = (key: string, word: string, text: string, look: MethodLook): Block =>
  paragraphBlock(
    key,
    [
      { text: `${word}. `, emphasis: 'strong' },
      { text, emphasis: 'none' },
    ],
    true,
    look,
  );

/** 'Ready. When it springs back …' in the method's own look. */
export const leadInBlock = (key: string, word: string, text: string, look: MethodLook): Block =>
  paragraphBlock(
    key,
    [
      { text: `${word}. `, emphasis: 'strong' },
      { text, emphasis: 'none' },
    ],
    false,
    look,
  );
