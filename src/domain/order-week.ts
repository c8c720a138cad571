/** A week of hand-overs: its days, its orders and the calendar that work for it is planned in. */
import type { Calendar } from './calendar.ts';

export interface OrderWeek {
  /** ISO 8601: `2026-W48`. */
  id: string;
  /** Monday and Sunday, ISO dates. */
  from: string;
  to: string;
  /** Earliest hand-over first. */
  orderIds: string[];
  /** From well before the week to the day after it. */
  calendar: Calendar;
}
