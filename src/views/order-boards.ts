/**
 * What does each tier stand on, and which box does it need? A stack has its boards from the stack's plan, the rest
 * from the finishing settings. A stack that travels put together has one box, of the drum's width and its whole height.
 */
import type { OrderStack } from '../compute/orders/order-stack.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { OrderWords } from '../wording/orders/index.ts';
import { boardFigure, cutFigure } from './finishing-figures.ts';
import type { OrderTier } from './order.types.ts';
import { partId } from './order-names.ts';

type Boarded = Pick<OrderTier, 'id' | 'board' | 'boxSide' | 'boxHeight' | 'boxText'>;

/** The same tier on its board of the stack and in its box; a tier that is not in the stack as it was. */
export function onStackBoard<T extends Boarded>(
  tier: T,
  stack: OrderStack,
  assembled: boolean,
  { boxHeightClearanceMm }: Pick<FinishingSettings, 'boxHeightClearanceMm'>,
  { sheet }: OrderWords,
): T {
  const at = stack.parts.findIndex((part) => partId(part) === tier.id);
  const own = stack.tiers[at];
  if (own === undefined) return tier;
  const board = boardFigure(own.board.acrossMm);
  if (!assembled) return { ...tier, board };
  if (at > 0) return { ...tier, board, boxSide: null, boxHeight: null, boxText: sheet.boxShared };
  const boxHeight = cutFigure(quantiseMm(stack.totalHeightMm + boxHeightClearanceMm));
  return { ...tier, board, boxSide: board, boxHeight, boxText: sheet.boxForAll(board.text, boxHeight.text) };
}
