/** What does each cake stand on, and which box does it need? Boards and boxes of an order as its papers show them. */
import type { BoardedPart } from '../compute/orders/order-boards.ts';
import type { OrderWords } from '../wording/orders/index.ts';
import { boardFigure, cutFigure } from './finishing-figures.ts';
import type { OrderTier } from './order.types.ts';

type Boxed = Pick<OrderTier, 'boxSide' | 'boxHeight' | 'boxText'>;

function boxView({ box }: BoardedPart, { sheet }: OrderWords): Boxed {
  if (box === null) return { boxSide: null, boxHeight: null, boxText: sheet.boxShared };
  const boxHeight = cutFigure(box.heightMm);
  if (box.acrossMm === null) return { boxSide: null, boxHeight, boxText: null };
  const boxSide = boardFigure(box.acrossMm);
  const text = box.holds === 'stack' ? sheet.boxForAll : sheet.box;
  return { boxSide, boxHeight, boxText: text(boxSide.text, boxHeight.text) };
}

/** Board and box of one cake; none of either for small cakes. */
export function boardView(
  boarded: BoardedPart | undefined,
  words: OrderWords,
): Boxed & Pick<OrderTier, 'board'> {
  if (boarded === undefined) return { board: null, boxSide: null, boxHeight: null, boxText: null };
  const { acrossMm } = boarded;
  return { board: acrossMm === null ? null : boardFigure(acrossMm), ...boxView(boarded, words) };
}
