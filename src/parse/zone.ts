/**
 * The one place that knows time zones. js-joda carries its own copy of the IANA time zone database, so that every
 * engine gives the same instants; it holds to the end of 2037, and later years are refused. Before 2000 some zones
 * were off by parts of a minute.
 */
import { type LocalDateTime, ZoneId } from '@js-joda/core';
import type { Minute } from '../domain/calendar.ts';
import type { Problem } from '../domain/problem.ts';
import { type Result, succeed } from '../domain/result.ts';
import { parseTimeZone } from './units/time-zone.ts';

/** Years whose clock changes are known, in whole minutes. */
export const FIRST_KNOWN_YEAR = 2000;
export const LAST_KNOWN_YEAR = 2037;

/** Whether instants of this date's year can be told. */
export const isKnownYear = (date: { year(): number }): boolean =>
  date.year() >= FIRST_KNOWN_YEAR && date.year() <= LAST_KNOWN_YEAR;

export const zoneProblem = (code: string, message: string, hint: string): Problem => ({
  code,
  severity: 'error',
  message,
  hint,
});

/** A zone by its IANA name; anything else is a problem that names the nearest one. */
export function zoneNamed(name: string): Result<ZoneId> {
  const known = parseTimeZone(name);
  return known.ok ? succeed(ZoneId.of(known.value)) : known;
}

/** Offsets from UTC that a local time can have: none where the clock jumps over it, two where it comes twice. */
export function offsetsOf(local: LocalDateTime, zone: ZoneId): number[] {
  return zone
    .rules()
    .validOffsets(local)
    .map((offset) => offset.totalSeconds() / 60);
}

/** The instant of a local time; a time that the clock jumps over moves on by the jump, the first of two counts. */
export const minuteOf = (local: LocalDateTime, zone: ZoneId): Minute =>
  local.atZone(zone).toEpochSecond() / 60;
