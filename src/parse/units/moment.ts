/** Times of day, and a day with a time, as the clock in the kitchen shows them. */
import { isLocalTime } from '../../domain/order-check.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';

const OF_DAY = /^([01]\d|2[0-4]):([0-5]\d)$/;
const DAY_MIN = 24 * 60;

/** Minutes after midnight: '07:00' is 420, '24:00' is 1440. Fails on any other form. */
export function parseTimeOfDay(text: string): Result<number> {
  const match = OF_DAY.exec(text.trim());
  const minutes = match === null ? DAY_MIN + 1 : Number(match[1]) * 60 + Number(match[2]);
  if (minutes <= DAY_MIN) return succeed(minutes);
  const hint = 'Write hours and minutes, two figures each: 07:00, 21:30.';
  return refuse('time-of-day-unreadable', `${quote(text)} is not a time of day`, hint);
}

/** A day and a time, '2026-11-28 14:00', as `2026-11-28T14:00`. Fails on days that the calendar does not have. */
export function parseDayAndTime(text: string): Result<string> {
  const local = text.trim().replace(/ +/, 'T');
  if (isLocalTime(local)) return succeed(local);
  const hint = 'Write year-month-day and a time, for example 2026-11-28 14:00.';
  return refuse('hand-over-time', `${quote(text)} is not a day and a time of the calendar`, hint);
}
