/**
 * Days as a kitchen's clock shows them, as plain data: computations and wording read this list and never ask a
 * clock or a zone. Instants are whole minutes since 1970-01-01 00:00 UTC. A day of 23 or 25 hours is simply a day
 * whose end is that much nearer or farther.
 */

/** Whole minutes since 1970-01-01 00:00 UTC. */
export type Minute = number;

const DAY_MS = 86_400_000;

/**
 * The day `days` after an ISO date, or before it; both are days of the calendar, without clock or zone.
 * @example daysAfter('2026-11-28', 7) // '2026-12-05'
 */
export function daysAfter(isoDate: string, days: number): string {
  return new Date(Date.parse(`${isoDate}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

/** From this instant on, local time is UTC plus so much. */
export interface OffsetFrom {
  fromMinute: Minute;
  offsetMin: number;
}

export interface CalendarDay {
  /** `2026-11-28`. */
  isoDate: string;
  /** Monday 1 to Sunday 7 (ISO 8601). */
  weekday: number;
  /** Local midnight, and the next one. */
  startMinute: Minute;
  endMinute: Minute;
  /** Between these hands may work and the oven may be on; outside is sleep. */
  workFromMinute: Minute;
  workToMinute: Minute;
}

/** Successive days of one zone. */
export interface Calendar {
  /** IANA name. */
  zone: string;
  days: CalendarDay[];
  /** Earliest first; the first holds from before the first day. */
  offsets: OffsetFrom[];
}
