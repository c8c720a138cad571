/**
 * On which days may a cake be baked for its hand-over? Not so early that it is past its keeping, not so late that
 * cooling, resting, filling, coats and their drying no longer fit, sleep kept free. Days of the kitchen's calendar.
 */
import type { Calendar } from '../../domain/calendar.ts';
import type { KitchenTimes } from '../../domain/times.ts';
import { awakeHours } from '../timeline/awake.ts';
import { neededBy } from '../timeline/needed-by.ts';
import { keepsMin } from '../timeline/process.ts';
import type { OrderWork, TierWork } from '../timeline/work.ts';

/** Indexes into the calendar's days; `last` before `first` when there is no such day. */
export interface BakeDays {
  first: number;
  last: number;
}

/** The days on which the tier's cakes may be baked. */
export function bakeDays(
  order: OrderWork,
  tier: TierWork,
  times: KitchenTimes,
  calendar: Calendar,
): BakeDays {
  const { days } = calendar;
  const keepsFrom = order.handOver - keepsMin(tier, times);
  const outBy = neededBy(order, tier, times, awakeHours(calendar));
  const first = days.findIndex(({ startMinute }) => startMinute >= keepsFrom);
  const last = days.findLastIndex(
    ({ workFromMinute, workToMinute }) =>
      workFromMinute + times.preheatMin + tier.bake.by <= outBy && workFromMinute < workToMinute,
  );
  return { first: first < 0 ? days.length : first, last };
}
