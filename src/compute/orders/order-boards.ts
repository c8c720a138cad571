/**
 * What does each cake of an order stand on, and how large is the box it travels in? In a stack a drum below, and
 * under each further tier a card as wide as it is with its coats on. By itself a covered cake stands on a drum and
 * a plain one on a card, both as wide as the finishing settings give; boxes are as wide as that.
 *
 *   inside of a box, high = cake + the board it really stands on + air; put together: the whole stack + air
 *
 * Common practice, no source.
 */
import type { FinishingSettings } from '../../domain/finishing.ts';
import { isStacked } from '../../domain/order.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { CARD_THICKNESS_MM, standsHighMm } from '../stacks/stack-plan.ts';
import { isDummyPart, type StackPart, stackParts } from './order-stack.ts';
import type { PlannedOrder } from './planned-order.types.ts';

export interface BoardedPart {
  part: StackPart;
  kind: 'drum' | 'card';
  /** Null where nobody knows how wide the cake is. */
  acrossMm: number | null;
  thicknessMm: number;
  /** Inside of the box it travels in; null where that is the box of the tier below all. */
  box: { acrossMm: number | null; heightMm: number; holds: 'cake' | 'stack' } | null;
}

export type BoardSettings = Pick<FinishingSettings, 'boardThicknessMm' | 'boxHeightClearanceMm'>;

/** Whether anything goes round it. */
export const isCovered = ({ finishes }: StackPart): boolean =>
  finishes.some(({ use }) => use === 'coating' || use === 'rolled');

/** A cake by itself, or the lowest of a stack, on a board as wide as the settings give. */
function onOwnBoard(part: StackPart, kind: BoardedPart['kind'], settings: BoardSettings): BoardedPart {
  const thicknessMm = kind === 'drum' ? settings.boardThicknessMm : CARD_THICKNESS_MM;
  return { part, kind, acrossMm: part.boardAcrossMm, thicknessMm, box: null };
}

const stoodMm = (part: StackPart): number =>
  standsHighMm({ ...part, solid: isDummyPart(part) }, CARD_THICKNESS_MM);

function inOwnBox(one: BoardedPart, heightMm: number, settings: BoardSettings): BoardedPart {
  const whole = quantiseMm(heightMm + one.thicknessMm + settings.boxHeightClearanceMm);
  return { ...one, box: { acrossMm: one.part.boardAcrossMm, heightMm: whole, holds: 'cake' } };
}

/** The tiers of a stack, bottom first. */
function stackBoards(
  parts: readonly StackPart[],
  assembled: boolean,
  settings: BoardSettings,
): BoardedPart[] {
  const boarded = parts.map(
    (part, at): BoardedPart =>
      at === 0
        ? onOwnBoard(part, 'drum', settings)
        : { part, kind: 'card', acrossMm: part.coatedAcrossMm, thicknessMm: CARD_THICKNESS_MM, box: null },
  );
  if (!assembled) return boarded.map((one) => inOwnBox(one, stoodMm(one.part), settings));
  const stackMm = boarded.reduce((sum, { part, thicknessMm }) => sum + thicknessMm + stoodMm(part), 0);
  const heightMm = quantiseMm(stackMm + settings.boxHeightClearanceMm);
  return boarded.map((one, at) =>
    at === 0 ? { ...one, box: { acrossMm: one.acrossMm, heightMm, holds: 'stack' } } : one,
  );
}

/** Every cake and dummy of an order on its board: a stack's tiers first, bottom first; small cakes have none. */
export function orderBoards(
  { order, tiers, dummies }: Pick<PlannedOrder, 'order' | 'tiers' | 'dummies'>,
  settings: BoardSettings,
): BoardedPart[] {
  const stacked = isStacked(order) ? stackParts({ tiers, dummies }) : [];
  const alone: StackPart[] = [...tiers.filter(({ smallTins }) => smallTins === null), ...dummies].filter(
    (part) => !stacked.includes(part),
  );
  return [
    ...stackBoards(stacked, order.travelsAssembled, settings),
    ...alone.map((part) =>
      inOwnBox(onOwnBoard(part, isCovered(part) ? 'drum' : 'card', settings), part.coatedHeightMm, settings),
    ),
  ];
}
