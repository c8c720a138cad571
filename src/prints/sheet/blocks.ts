/** The plain blocks of running text: headings, paragraphs, lists and cautions. */
import { type Line, type Paragraph, paragraph, type Span } from './lines.ts';
import type { SheetContext } from './sheet-context.ts';
import { type Block, keptTogether, type Strip, withoutLonely } from './strip.ts';
import type { StructureTag, Surface } from './surface.ts';
import { drawLine, drawText, setText } from './text-block.ts';
import { type TypeStyle, typeScale } from './type-scale.ts';
import { MM_PER_PT } from './units.ts';

export interface HeadingOptions {
  level: 1 | 2 | 3;
  type: TypeStyle;
  spaceMm?: number;
  /** Shown in the outline beside the pages; links can jump to `anchor`. */
  bookmark?: string;
  anchor?: string;
}

const headingTags = { 1: 'H1', 2: 'H2', 3: 'H3' } as const;

/** A heading: kept whole, and kept with what follows. */
export const heading =
  (text: string, options: HeadingOptions): Block =>
  (widthMm, context) => {
    const set = setText([paragraph(text, options.type)], widthMm, context);
    return [
      {
        heightMm: set.heightMm + 1.2,
        spaceMm: options.spaceMm ?? 7,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          if (options.bookmark) surface.bookmark(options.bookmark, options.level, { xMm, yMm });
          if (options.anchor) surface.anchor(options.anchor, { xMm, yMm });
          surface.within(headingTags[options.level], {}, () => drawText(surface, context, set, xMm, yMm));
        },
      },
    ];
  };

/** About 75 letters: longer lines are hard to follow. */
const LONGEST_LINE_EM = 36;

const readableMm = (widthMm: number, type: TypeStyle): number =>
  Math.min(widthMm, LONGEST_LINE_EM * type.sizePt * MM_PER_PT);

type Wrap = (surface: Surface, body: () => void) => void;

function lineStrips(text: Paragraph, widthMm: number, indentMm: number, context: SheetContext, wrap: Wrap) {
  const set = setText([text], readableMm(widthMm - indentMm, text.type), context);
  const leadingMm = text.type.leadingPt * MM_PER_PT;
  const strip = (line: Line): Strip => ({
    heightMm: leadingMm,
    spaceMm: 0,
    keepWithNext: false,
    draw: (surface, xMm, yMm) =>
      wrap(surface, () =>
        drawLine(surface, context, line, text.type, xMm + indentMm, yMm + set.firstBaselineMm),
      ),
  });
  return withoutLonely(set.lines.map(({ line }) => strip(line)));
}

const spaced = (strips: Strip[], spaceMm: number): Strip[] =>
  strips.map((strip, index) => (index === 0 ? { ...strip, spaceMm } : strip));

/** A paragraph; `key` must be its own within the section, so that it stays one paragraph over two pages. */
export const textParagraph =
  (key: string, text: Paragraph, spaceMm = 2): Block =>
  (widthMm, context) =>
    spaced(
      lineStrips(text, widthMm, 0, context, (surface, body) => surface.within('P', { key }, body)),
      spaceMm,
    );

/** A list with a small mark before each entry. */
export const list =
  (key: string, entries: string[], type: TypeStyle = typeScale.body): Block =>
  (widthMm, context) =>
    entries.flatMap((entry, index) => {
      const inItem = (surface: Surface, tag: StructureTag, body: () => void) =>
        surface.within('L', { key }, () =>
          surface.within('LI', { key: String(index) }, () => surface.within(tag, { key: 'part' }, body)),
        );
      const wrap: Wrap = (surface, body) => inItem(surface, 'LBody', body);
      const [first, ...rest] = lineStrips(paragraph(entry, type), widthMm, 5, context, wrap);
      if (!first) return [];
      const mark = setText([paragraph('–', { ...type, colour: 'accent' })], 5, context);
      const marked: Strip = {
        ...first,
        draw(surface, xMm, yMm) {
          inItem(surface, 'Lbl', () => drawText(surface, context, mark, xMm, yMm));
          first.draw(surface, xMm, yMm);
        },
      };
      return spaced([marked, ...rest], 1.2);
    });

const BAR_MM = 0.9;
const CAUTION_INDENT_MM = 4;

/** A caution in the size of the text beside it, with the word and a bar: never colour alone. */
export const caution =
  (word: string, text: string, type: TypeStyle = typeScale.body): Block =>
  (widthMm, context) => {
    const spans: Span[] = [{ text: `${word}. `, font: 'textBold', colour: 'caution' }, { text }];
    const set = setText([{ spans, type }], readableMm(widthMm - CAUTION_INDENT_MM, type), context);
    const strip: Strip = {
      heightMm: set.heightMm + 1,
      spaceMm: 2.5,
      keepWithNext: false,
      draw(surface, xMm, yMm) {
        surface.artifact(() => drawBar(surface, context, xMm, yMm, set.heightMm + 1));
        surface.within('P', {}, () => drawText(surface, context, set, xMm + CAUTION_INDENT_MM, yMm + 0.5));
      },
    };
    return [strip];
  };

function drawBar(surface: Surface, context: SheetContext, xMm: number, yMm: number, heightMm: number): void {
  surface.path(
    [
      { op: 'move', x: xMm, y: yMm },
      { op: 'line', x: xMm + BAR_MM, y: yMm },
      { op: 'line', x: xMm + BAR_MM, y: yMm + heightMm },
      { op: 'line', x: xMm, y: yMm + heightMm },
      { op: 'close' },
    ],
    { fill: context.inks.caution },
  );
}

function drawDown(strips: Strip[], surface: Surface, xMm: number, yMm: number): void {
  let y = yMm;
  for (const [index, strip] of strips.entries()) {
    if (index > 0) y += strip.spaceMm;
    strip.draw(surface, xMm, y);
    y += strip.heightMm;
  }
}

const COLUMN_GAP_MM = 12;

/** Short texts in two columns that stay on one page, the left one read first. */
export const beside =
  (left: Block[], right: Block[]): Block =>
  (widthMm, context) => {
    const columnMm = (widthMm - COLUMN_GAP_MM) / 2;
    const columns = [left, right].map((blocks) => blocks.flatMap((block) => block(columnMm, context)));
    const heights = columns.map((strips) =>
      strips.reduce((sum, strip, index) => sum + (index > 0 ? strip.spaceMm : 0) + strip.heightMm, 0),
    );
    const heightMm = Math.max(...heights);
    // No more air above than the taller column asks for, or the other one where it is nearly as tall.
    const withAir = columns.map(([first], at) => (first?.spaceMm ?? 0) + (heights[at] ?? 0));
    const spaceMm = Math.max(...withAir) - heightMm;
    const draw = (surface: Surface, xMm: number, yMm: number) => {
      for (const [index, strips] of columns.entries())
        drawDown(strips, surface, xMm + index * (columnMm + COLUMN_GAP_MM), yMm);
    };
    return [{ heightMm, spaceMm, keepWithNext: false, draw }];
  };

/** Several blocks that must share a page. */
export const together =
  (...blocks: Block[]): Block =>
  (widthMm, context) =>
    keptTogether(blocks.flatMap((block) => block(widthMm, context)));

/** A block that stays with the beginning of the next one: a sentence above the table it speaks of. */
export const leading =
  (block: Block): Block =>
  (widthMm, context) =>
    block(widthMm, context).map((strip) => ({ ...strip, keepWithNext: true }));
