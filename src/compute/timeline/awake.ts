/** When are hands awake? Searches among the working hours of the days; nothing here knows the clock. */
import type { Calendar, Minute } from '../../domain/calendar.ts';

/** Working hours, earliest first. */
export interface Awake {
  from: Minute[];
  to: Minute[];
}

export const NEVER = Number.NEGATIVE_INFINITY;

export function awakeHours({ days }: Calendar): Awake {
  const open = days.filter(({ workFromMinute, workToMinute }) => workToMinute > workFromMinute);
  return {
    from: open.map(({ workFromMinute }) => workFromMinute),
    to: open.map(({ workToMinute }) => workToMinute),
  };
}

/** Index of the last entry below a value, -1 when there is none; entries ascend. */
export function lastBelow(ascending: readonly number[], value: number): number {
  let [low, high] = [0, ascending.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ascending[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Latest start of so many minutes in one day's hours that end by then; NEVER when no day has them. */
export function latestAwake({ from, to }: Awake, minutes: number, endBy: Minute): Minute {
  for (let day = lastBelow(from, endBy); day >= 0; day -= 1) {
    const start = Math.min(endBy, to[day] ?? NEVER) - minutes;
    if (start >= (from[day] ?? 0)) return start;
  }
  return NEVER;
}

/** Earliest start from then on; null when the days run out. */
export function earliestAwake({ from, to }: Awake, minutes: number, startAt: Minute): Minute | null {
  for (let day = Math.max(0, lastBelow(from, startAt + 1)); day < from.length; day += 1) {
    const start = Math.max(startAt, from[day] ?? startAt);
    if (start + minutes <= (to[day] ?? NEVER)) return start;
  }
  return null;
}

/** The instant before which so many working minutes lie, counted back from another; NEVER when there are too few. */
export function workedBack({ from, to }: Awake, minutes: number, endBy: Minute): Minute {
  let left = minutes;
  for (let day = lastBelow(from, endBy); day >= 0; day -= 1) {
    const end = Math.min(endBy, to[day] ?? NEVER);
    const open = end - (from[day] ?? 0);
    if (open >= left) return end - left;
    left -= Math.max(0, open);
  }
  return NEVER;
}
