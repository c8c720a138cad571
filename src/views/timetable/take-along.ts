/** What goes into the car beside the cakes: told where an order is driven away and something is done at the other end. */

import type { Step } from '../../compute/timeline/plan.types.ts';
import { jointsOf } from '../../compute/timeline/process.ts';
import type { OrderWork } from '../../compute/timeline/work.ts';
import { listInWords } from '../../wording/list.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import type { TimetableWords } from '../../wording/timetable/index.ts';
import type { TimetableSource } from './timetable-input.ts';

/** Tiers that are put together at the other end. */
const stackedThere = (order: OrderWork): boolean => jointsOf(order) > 0 && !order.travelsAssembled;

function thingsOf(order: OrderWork, { along, dummy }: TimetableWords): string[] {
  const named = [...(order.putOn ?? []), ...(order.hired ?? []).map(({ name }) => name ?? dummy)].map(
    uncapitalised,
  );
  return [
    ...(order.place === 'sold at a stall' ? along.forStall : along.forOrder),
    ...(stackedThere(order) ? along.forStack(order.dowel === true) : []),
    ...(order.covered === true ? along.forCovered(stackedThere(order)) : []),
    ...new Set(named),
  ];
}

/** A note for each order that this step drives away. */
export function alongNotes({ kind, orderIds }: Step, { work, words }: TimetableSource): string[] {
  if (kind !== 'deliver') return [];
  return work.orders
    .filter(({ id }) => orderIds.includes(id))
    .map((order) => words.along.take(listInWords(thingsOf(order, words), words.and)));
}

/** Where a cake travels whole, its ribbon is on before it is boxed. */
export function ribbonNotes({ kind, orderIds }: Step, { work, words }: TimetableSource): string[] {
  const here = work.orders.filter((order) => order.covered === true && !stackedThere(order));
  return kind === 'pack' && here.some(({ id }) => orderIds.includes(id)) ? [words.along.ribbonOn] : [];
}
