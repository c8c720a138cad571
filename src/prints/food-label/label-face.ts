/**
 * One label in its size: the largest type that fits, the nutrition as a table where there is room and as a line
 * where there is not. What does not fit at the least size is refused with the size it needs, never set smaller and
 * never left out.
 */
import type { LabelSize } from '../../domain/label-settings.ts';
import type { Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { LabelLine, LabelView } from '../../views/label.types.ts';
import type { LabelWords } from '../../wording/label/index.ts';
import { formatNumber } from '../../wording/number.ts';
import { narrowestMm, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { labelParagraph } from './label-text.ts';
import { type LabelType, labelType } from './label-type.ts';
import { nutritionBlock } from './nutrition-block.ts';

export type LabelForm = 'full' | 'card';

export interface LabelFace {
  size: LabelSize;
  /** Of the text, pt. */
  sizePt: number;
  nutrition: 'table' | 'line' | 'none';
  draw(surface: Surface, xMm: number, yMm: number): void;
}

const GROWTHS = [1.4, 1.3, 1.2, 1.12, 1.05] as const;
/** Type of a card may grow further: it is read from beside the cake. */
const CARD_GROWTHS = [2, 1.8, 1.6, ...GROWTHS] as const;

const paddingMm = ({ widthMm, heightMm }: LabelSize): number =>
  Math.min(5, Math.max(2.5, Math.min(widthMm, heightMm) * 0.05));

interface Block {
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

interface Setting {
  view: LabelView;
  form: LabelForm;
  type: LabelType;
  table: boolean;
  widthMm: number;
  context: SheetContext;
}

function textBlock({ type, widthMm, context }: Setting, line: LabelLine): Block {
  const set = setText([labelParagraph(line, type)], widthMm, context);
  return {
    heightMm: set.heightMm,
    draw: (surface, xMm, yMm) =>
      surface.within('P', { key: line.id }, () => drawText(surface, context, set, xMm, yMm)),
  };
}

function titleBlock({ view, type, widthMm, context }: Setting): Block {
  const set = setText([paragraph(view.foodName, type.title)], widthMm, context);
  return {
    heightMm: set.heightMm,
    draw: (surface, xMm, yMm) => surface.within('H2', {}, () => drawText(surface, context, set, xMm, yMm)),
  };
}

const linesOf = ({ view, form }: Pick<Setting, 'view' | 'form'>): LabelLine[] =>
  form === 'card' ? view.card : view.lines;

/** Null where the table does not fit across. */
function blocksOf(setting: Setting): Block[] | null {
  const { view, table, type, widthMm, context } = setting;
  const blocks: Block[] = [titleBlock(setting)];
  for (const line of linesOf(setting)) {
    if (line.id !== 'nutrition' || !table || view.nutrition === null) {
      blocks.push(textBlock(setting, line));
      continue;
    }
    const block = nutritionBlock(view.nutrition, type, widthMm, context);
    if (block === null) return null;
    blocks.push(block);
  }
  return blocks;
}

const heightOf = (blocks: readonly Block[], { spaceMm }: LabelType): number =>
  blocks.reduce((sum, { heightMm }) => sum + heightMm, 0) + (blocks.length - 1) * spaceMm;

function drawBlocks(
  blocks: readonly Block[],
  type: LabelType,
  surface: Surface,
  xMm: number,
  yMm: number,
): void {
  let y = yMm;
  for (const block of blocks) {
    block.draw(surface, xMm, y);
    y += block.heightMm + type.spaceMm;
  }
}

/** Whether no word is wider than the label: type is not broken inside a word. */
function wordsFit({ view, form, type, widthMm, context }: Setting): boolean {
  const paragraphs = [
    paragraph(view.foodName, type.title),
    ...linesOf({ view, form }).map((line) => labelParagraph(line, type)),
  ];
  return paragraphs.every((one) => narrowestMm(one, context.metrics) <= widthMm + 1e-6);
}

function widestWordMm({ view, form, type, context }: Setting): number {
  const paragraphs = [
    paragraph(view.foodName, type.title),
    ...linesOf({ view, form }).map((line) => labelParagraph(line, type)),
  ];
  return Math.max(...paragraphs.map((one) => narrowestMm(one, context.metrics)));
}

const whole = (mm: number): string => formatNumber(Math.ceil(mm - 1e-6), 0);

function tooSmall(setting: Setting, size: LabelSize, words: LabelWords): Problem {
  const { view, type } = setting;
  const pad = 2 * paddingMm(size);
  const why = words.tooSmall.why(
    formatNumber(size.widthMm, 1),
    formatNumber(size.heightMm, 1),
    formatNumber(view.xHeightMm, 2),
  );
  const blocks = wordsFit(setting) ? blocksOf({ ...setting, table: false }) : null;
  // The padding of a higher label is a little wider, up to 5 mm a side.
  const hint =
    blocks === null
      ? words.tooSmall.wider(whole(widestWordMm(setting) + 10))
      : words.tooSmall.need(whole(heightOf(blocks, type) + Math.max(pad, 10)), formatNumber(size.widthMm, 1));
  return {
    code: 'label-too-small',
    severity: 'error',
    message: `${words.tooSmall.title(view.foodName)}. ${why}`,
    hint,
  };
}

export interface FaceAsk {
  view: LabelView;
  form: LabelForm;
  size: LabelSize;
  context: SheetContext;
  words: LabelWords;
}

/** Whether a label can be set in a size at all. */
export function labelFits({ view, form, size, context }: Omit<FaceAsk, 'words'>): boolean {
  const pad = paddingMm(size);
  const widthMm = size.widthMm - 2 * pad;
  const type = labelType(view.xHeightMm, 1, context.metrics);
  const setting: Setting = { view, form, type, table: false, widthMm, context };
  const blocks = wordsFit(setting) ? blocksOf(setting) : null;
  return blocks !== null && heightOf(blocks, type) <= size.heightMm - 2 * pad + 1e-6;
}

/** The face of a label in a size, or `label-too-small` with the size it needs in the hint. */
export function labelFace({ view, form, size, context, words }: FaceAsk): Result<LabelFace> {
  const pad = paddingMm(size);
  const widthMm = size.widthMm - 2 * pad;
  const setting = (growth: number, table: boolean): Setting => ({
    view,
    form,
    type: labelType(view.xHeightMm, growth, context.metrics),
    table,
    widthMm,
    context,
  });
  const roomMm = size.heightMm - 2 * pad + 1e-6;
  const placed = (growth: number, table: boolean): LabelFace | null => {
    const tried = setting(growth, table);
    const blocks = wordsFit(tried) ? blocksOf(tried) : null;
    if (blocks === null || heightOf(blocks, tried.type) > roomMm) return null;
    return {
      size,
      sizePt: tried.type.text.sizePt,
      nutrition: table ? 'table' : hasTable ? 'line' : 'none',
      draw: (surface, xMm, yMm) => drawBlocks(blocks, tried.type, surface, xMm + pad, yMm + pad),
    };
  };
  const hasTable = form === 'full' && view.nutrition !== null;
  // Most labels that do not fit at the least size are known by one try.
  for (const table of hasTable ? [true, false] : [false]) {
    const least = placed(1, table);
    if (least === null) continue;
    const larger = form === 'card' ? CARD_GROWTHS : GROWTHS;
    for (const growth of larger) {
      const face = placed(growth, table);
      if (face !== null) return succeed(face);
    }
    return succeed(least);
  }
  return fail(tooSmall(setting(1, false), size, words));
}
