/**
 * A recipe's weights for every tin, small: a row for each tin while the ingredients fit across the page; else a
 * column for each tin, as many as fit at a time, or the ingredients in turn, whichever takes less paper.
 */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { heightOfBlocks } from './block-wraps.ts';
import type { TinsTold } from './told-of-tins.ts';
import { columnTables } from './weights-by-columns.ts';
import { partTables, rowPlan, wholeTable } from './weights-by-rows.ts';

/** Room that a page gives the tables, mm. */
export interface WeightsRoom {
  widthMm: number;
  heightMm: number;
}

const TABLE_SPACE_MM = 4;

/** Pages that tables take which are each kept whole. */
function pagesOf(
  blocks: readonly Block[],
  { widthMm, heightMm }: WeightsRoom,
  context: SheetContext,
): number {
  let pages = 0;
  let usedMm = heightMm;
  for (const block of blocks) {
    const tallMm = heightOfBlocks([block], widthMm, context);
    if (usedMm + tallMm > heightMm) {
      pages += 1;
      // The first on a page has no space above it.
      usedMm = -TABLE_SPACE_MM;
    }
    usedMm += tallMm;
  }
  return pages - 1 + usedMm / heightMm;
}

/** So much more paper is well spent on having all of a tin's weights in one place. */
const WORTH_PAGES = 0.6;

/** The tables of a recipe's weights. Throws when they do not fit the page's width in any form. */
export function weightsTables(parts: TinsTold, room: WeightsRoom, context: SheetContext): Block[] {
  if (parts.recipe.rows.length === 0) return [];
  const { widthMm, heightMm } = room;
  const plan = rowPlan(parts, context);
  const whole = wholeTable(plan, widthMm);
  if (whole) return [whole];
  const columns = columnTables(parts, widthMm, context);
  const inTurn = partTables(plan, widthMm);
  if (columns === null && inTurn === null)
    throw new Error(`the weights of '${parts.recipe.id}' do not fit the booklet`);
  if (columns === null || inTurn === null) return columns ?? inTurn?.blocks ?? [];
  const isWorthIt = pagesOf(columns, room, context) <= inTurn.heightMm / heightMm + WORTH_PAGES;
  return isWorthIt ? columns : inTurn.blocks;
}
