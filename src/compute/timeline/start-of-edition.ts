/** From when on can anything still be begun? From the start of the edition's day; no clock is asked. */
import type { Calendar, Minute } from '../../domain/calendar.ts';

/** Undefined when the edition lies before all days of the calendar; their end when it lies after them. */
export function startOfEdition({ days }: Calendar, edition: string): Minute | undefined {
  const own = days.find(({ isoDate }) => isoDate === edition);
  if (own) return own.startMinute;
  const last = days.at(-1);
  // ISO dates are in order as text.
  return last && edition > last.isoDate ? last.endMinute : undefined;
}
