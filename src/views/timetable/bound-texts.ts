/** How good a plan is known to be, in a baker's words: how many oven loads, and how much later one could begin. */
import { formatDuration } from '../../wording/timetable/index.ts';
import type { TimetableSource } from './timetable-input.ts';

/** How much later than this a timetable of the same loads might begin. */
export function boundText({ plan, words }: TimetableSource): string {
  const later = plan.bound.spanMin - plan.bound.leastSpanMin;
  return later <= 0 ? words.boundReached : words.bound(formatDuration(later));
}

/** How many loads, and whether fewer would do; of one order its own among the week's. */
export function loadsText({ plan, words, orders }: TimetableSource): string {
  const { loads, leastLoads } = plan.bound;
  const own = plan.loads.filter(({ tins }) =>
    tins.some(({ orderId }) => orders.some(({ id }) => id === orderId)),
  ).length;
  if (own < loads) return words.loadsOfWeek(own, loads);
  return loads === leastLoads ? words.loadsProven(loads) : words.loadsBound(loads, leastLoads);
}
