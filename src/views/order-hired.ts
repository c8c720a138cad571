/** What of an order is hired out and comes back: stands and the like, and hired dummy tiers. */
import type { PlannedOrder } from '../compute/orders/plan-order.ts';
import type { OrderWords } from '../wording/orders/index.ts';
import { dummyName } from './order-names.ts';

/**
 * Each with the day by which it is to be back, where one was agreed.
 * @example hiredThings(planned, words) // ['Cake stand, by 1 December 2026']
 */
export function hiredThings(planned: PlannedOrder, words: OrderWords): string[] {
  const { order, dummies } = planned;
  return [
    ...order.extras.flatMap(({ name, comesBack, backBy }) =>
      comesBack === true
        ? [words.sheet.hiredBack(name, backBy === undefined ? null : words.date(backBy))]
        : [],
    ),
    ...dummies.flatMap(({ at, ask }) =>
      ask.supply === 'hired' ? [words.sheet.hiredBack(dummyName(planned, at, words), null)] : [],
    ),
  ];
}
