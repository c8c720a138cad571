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

/** Put together at home, dummies and all: whoever cuts it reads on the stack sheet what is inside. */
const stackedHere = (order: OrderWork): boolean => jointsOf(order) > 0 && order.travelsAssembled;

function thingsOf(order: OrderWork, { along, dummy }: TimetableWords): string[] {
  const hired = (order.hired ?? []).flatMap(({ name }) => name ?? (stackedHere(order) ? [] : dummy));
  const named = [...(order.putOn ?? []), ...hired].map(uncapitalised);
  return [
    ...(order.place === 'sold at a stall' ? along.forStall : along.forOrder),
    ...(stackedThere(order) ? along.forStack(order.dowel === true) : []),
    ...(stackedHere(order) ? [along.stackSheet] : []),
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

/** Where a cake travels whole, its ribbon is on before it is boxed; round tiers that are stacked there, after that. */
export function ribbonNotes({ kind, orderIds }: Step, { work, words }: TimetableSource): string[] {
  const own = work.orders.filter(({ id, covered }) => covered === true && orderIds.includes(id));
  if (kind === 'set-up' && own.some(stackedThere)) return [words.along.ribbonThere];
  return kind === 'pack' && own.some((order) => !stackedThere(order)) ? [words.along.ribbonOn] : [];
}
