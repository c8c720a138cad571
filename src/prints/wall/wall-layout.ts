/**
 * How large can everything be? Upright and lengthwise, the largest growth at which a sheet holds all; where even
 * the least sizes need more than one sheet, the way round that needs fewer.
 */
import type { WallTable, WallView } from '../../views/wall.types.ts';
import type { WallWords } from '../../wording/wall/index.ts';
import { caution, textParagraph } from '../sheet/blocks.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetSize } from '../sheet/paper.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { table, tableFits } from '../sheet/table/table.ts';
import { wallFrame } from './wall-frame.ts';
import { type WallLink, wallHead } from './wall-head.ts';
import { wallPlate } from './wall-plate.ts';
import { wallTableSpec } from './wall-table.ts';
import { type WallType, wallType } from './wall-type.ts';

/** Beyond this a sheet shouts. */
const GROWTHS = [2, 1.8, 1.6, 1.5, 1.4, 1.3, 1.2, 1.1, 1];

export interface WallLayout {
  size: SheetSize;
  growth: number;
  type: WallType;
  blocks: Block[];
}

interface LaidOut extends WallLayout {
  /** Of all blocks in one column. */
  heightMm: number;
  roomMm: number;
}

const wallTable =
  (body: WallTable, type: WallType, growth: number): Block =>
  (widthMm, context) =>
    table(wallTableSpec(body, type, growth, widthMm))(widthMm, context);

function blocksOf(view: WallView, type: WallType, growth: number, words: WallWords, link: WallLink | null) {
  const { body, notes, cautions } = view;
  return [
    wallHead(view, type, growth, link),
    body.form === 'table' ? wallTable(body, type, growth) : wallPlate(body, type, growth),
    ...notes.map((note, index) => textParagraph(`note-${index}`, paragraph(note, type.note), 3)),
    ...cautions.map(({ text }) => caution(words.caution, text, type.note)),
  ];
}

function heightOf(blocks: Block[], widthMm: number, context: SheetContext): number {
  const strips = blocks.flatMap((block) => block(widthMm, context));
  return strips.reduce((sum, { heightMm, spaceMm }, index) => sum + heightMm + (index > 0 ? spaceMm : 0), 0);
}

function laidOut(
  view: WallView,
  size: SheetSize,
  growth: number,
  words: WallWords,
  context: SheetContext,
  link: WallLink | null,
): LaidOut | null {
  const type = wallType(growth, context);
  const frame = wallFrame(size, context);
  const { body } = view;
  if (
    body.form === 'table' &&
    !tableFits(wallTableSpec(body, type, growth, frame.widthMm), frame.widthMm, context)
  )
    return null;
  const blocks = blocksOf(view, type, growth, words, link);
  const heightMm = heightOf(blocks, frame.widthMm, context);
  return { size, growth, type, blocks, heightMm, roomMm: frame.heightMm };
}

/** Throws where a table is too wide for either way round at the least sizes. */
export function wallLayout(
  view: WallView,
  upright: SheetSize,
  words: WallWords,
  context: SheetContext,
  link: WallLink | null,
): WallLayout {
  const sizes = [upright, { widthMm: upright.heightMm, heightMm: upright.widthMm }];
  for (const growth of GROWTHS) {
    for (const size of sizes) {
      const tried = laidOut(view, size, growth, words, context, link);
      if (tried && tried.heightMm <= tried.roomMm) return tried;
    }
  }
  const least = sizes.flatMap((size) => laidOut(view, size, 1, words, context, link) ?? []);
  const best = least.sort((a, b) => a.heightMm / a.roomMm - b.heightMm / b.roomMm)[0];
  if (!best) throw new Error(`wall reference '${view.id}' is too wide for its sheet`);
  return best;
}
