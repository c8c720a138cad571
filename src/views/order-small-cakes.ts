/** Small cakes as an order shows them: their tins and boxes, and the minutes that the kitchen gave for them. */

import type { PlannedTier } from '../compute/orders/plan-order.ts';
import { tinsFor } from '../compute/orders/small-tin.ts';
import type { TierOven } from '../compute/orders/tier-oven.ts';
import { type Kitchen, PLAIN_OVEN } from '../domain/kitchen.ts';
import { bakeWordsFor } from '../wording/bake/index.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { dialTextsOf } from './bake-figures.ts';
import type { BakeFigures } from './bake-figures.types.ts';
import type { OrderTier } from './order.types.ts';
import { countFigure } from './order-batters.ts';
import { ovenFigures } from './oven-figures.ts';

/** A cake's tin in words; of small cakes their cups. */
export function sizeText({ tin, smallTins }: PlannedTier, words: Words, { beside }: OrderWords): string {
  if (smallTins === null) return tinSize(tin, words);
  return beside.cups(smallTins.tins, smallTins.cups, tinSize(smallTins.cup, words));
}

/** Tins and boxes; null for whole cakes. */
export function smallView(
  { ask, count, smallTins }: PlannedTier,
  { beside }: OrderWords,
): OrderTier['small'] {
  if (ask.small === undefined || smallTins === null) return null;
  const { box } = ask.small;
  const boxes = tinsFor(count, box);
  const last = count - (boxes - 1) * box;
  return {
    tins: countFigure(smallTins.tins),
    boxes: countFigure(boxes),
    boxesText: beside.boxes(boxes, box, last),
  };
}

/** The kitchen's own minutes in the place of worked-out ones. */
export function smallBakeFigures(small: TierOven, { oven, locale }: Kitchen): BakeFigures {
  const { ovenC } = small;
  const { set, others } = dialTextsOf(ovenC, oven ?? PLAIN_OVEN, bakeWordsFor(locale));
  const { ownMinutes } = orderWordsFor(locale).beside;
  return {
    dial: { value: ovenC, unit: 'C', text: set },
    dialOthers: others,
    ...ovenFigures(small),
    advice: ownMinutes,
    bakes: { value: 0, unit: 'count', text: ownMinutes },
  };
}
