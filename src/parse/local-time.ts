/**
 * When is that? A local date and time with its zone as an instant. A time that the clock jumps over does not exist
 * and is refused; of a time that comes twice the first is meant.
 */
import { LocalDateTime } from '@js-joda/core';
import type { Minute } from '../domain/calendar.ts';
import { isLocalTime } from '../domain/order-check.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import {
  FIRST_KNOWN_YEAR,
  isKnownYear,
  LAST_KNOWN_YEAR,
  minuteOf,
  offsetsOf,
  zoneNamed,
  zoneProblem,
} from './zone.ts';

/**
 * Minutes since 1970-01-01 00:00 UTC.
 * @example minuteOfLocal('2026-11-28T14:00', 'Europe/London') // { ok: true, value: 29931240 }
 */
export function minuteOfLocal(localTime: string, zoneName: string): Result<Minute> {
  const zone = zoneNamed(zoneName);
  if (!zone.ok) return zone;
  if (!isLocalTime(localTime)) {
    const message = `The time is '${localTime}', expected a date and time of the calendar`;
    return fail(zoneProblem('local-time-unreadable', message, 'Write it like 2026-11-28T14:00.'));
  }
  const local = LocalDateTime.parse(localTime);
  if (!isKnownYear(local)) {
    const message = `The year is ${local.year()}, expected ${FIRST_KNOWN_YEAR} to ${LAST_KNOWN_YEAR}, as far as clock changes are known`;
    return fail(zoneProblem('local-time-out-of-range', message, 'Check the year.'));
  }
  if (offsetsOf(local, zone.value).length === 0) {
    const message = `${localTime.replace('T', ' ')} does not exist in ${zoneName}: the clock jumps over it that night`;
    return fail(zoneProblem('local-time-skipped', message, 'Name a time an hour earlier or later.'));
  }
  return succeed(minuteOf(local, zone.value));
}
