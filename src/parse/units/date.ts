import { type Result, succeed } from '../../domain/result.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return month === 2 && leap ? 29 : (DAYS[month - 1] ?? 0);
}

/**
 * A day of the calendar, year first: '2026-11-01'. Fails on any other form and on days that do not exist;
 * years from 1980 (the first that a ZIP or PDF reader is sure to take) to 2199.
 */
export function parseDay(text: string): Result<string> {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  const [year, month, day] = match ? [Number(match[1]), Number(match[2]), Number(match[3])] : [0, 0, 0];
  if (year >= 1980 && year < 2200 && day >= 1 && day <= daysIn(year, month)) return succeed(text.trim());
  return refuse(
    'date-unreadable',
    `${quote(text)} is not a day of the calendar`,
    'Write year-month-day, for example 2026-11-01.',
  );
}
