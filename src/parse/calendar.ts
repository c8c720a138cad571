/** Successive days of a zone with their working hours, as instants: what computations and wording read of time. */
import { Instant, LocalDate, type ZoneId } from '@js-joda/core';
import type { Calendar, CalendarDay, OffsetFrom } from '../domain/calendar.ts';
import { isLocalTime } from '../domain/order-check.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { WorkSettings } from '../domain/work-settings.ts';
import { FIRST_KNOWN_YEAR, isKnownYear, LAST_KNOWN_YEAR, minuteOf, zoneNamed, zoneProblem } from './zone.ts';

const MOST_DAYS = 800;

type Hours = WorkSettings['workingDay'];

function dayOf(date: LocalDate, zone: ZoneId, hours: Hours): CalendarDay {
  const at = (minuteOfDay: number) =>
    minuteOf(
      minuteOfDay >= 1440
        ? date.plusDays(1).atStartOfDay()
        : date.atTime(Math.floor(minuteOfDay / 60), minuteOfDay % 60),
      zone,
    );
  return {
    isoDate: date.toString(),
    weekday: date.dayOfWeek().value(),
    startMinute: at(0),
    endMinute: at(1440),
    workFromMinute: at(hours.fromMin),
    workToMinute: at(hours.toMin),
  };
}

/** Where the offset changes among the days: the change itself is found by halving the day it falls on. */
function offsetsFrom(days: readonly CalendarDay[], zone: ZoneId): OffsetFrom[] {
  const found: OffsetFrom[] = [];
  for (const { startMinute, endMinute } of days) {
    for (const minute of [startMinute, endMinute]) {
      const offsetMin = offsetAt(minute, zone);
      const last = found.at(-1);
      if (last === undefined) found.push({ fromMinute: minute, offsetMin });
      else if (last.offsetMin !== offsetMin)
        found.push({ fromMinute: changeIn(startMinute, minute, zone), offsetMin });
    }
  }
  return found;
}

const offsetAt = (minute: number, zone: ZoneId): number =>
  zone
    .rules()
    .offset(Instant.ofEpochSecond(minute * 60))
    .totalSeconds() / 60;

function changeIn(from: number, to: number, zone: ZoneId): number {
  let [before, after] = [from, to];
  const old = offsetAt(before, zone);
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (offsetAt(middle, zone) === old) before = middle;
    else after = middle;
  }
  return after;
}

/**
 * The days from one ISO date to another, both included. Problems: an unknown zone, dates that are none or in the
 * wrong order, more than 800 days.
 * @example kitchenCalendar('Europe/London', { fromMin: 420, toMin: 1260 }, '2026-11-23', '2026-11-29')
 */
export function kitchenCalendar(zoneName: string, hours: Hours, from: string, to: string): Result<Calendar> {
  const zone = zoneNamed(zoneName);
  if (!zone.ok) return zone;
  const dates = [from, to].map((text) => (isLocalTime(`${text}T00:00`) ? LocalDate.parse(text) : null));
  const [first, last] = dates;
  if (!first || !last || last.isBefore(first) || !isKnownYear(first) || !isKnownYear(last)) {
    const message = `The days run from '${from}' to '${to}', expected two ISO dates in order, from ${FIRST_KNOWN_YEAR} to ${LAST_KNOWN_YEAR}`;
    return fail(zoneProblem('calendar-days', message, 'Write them like 2026-11-23 and 2026-11-29.'));
  }
  const days: CalendarDay[] = [];
  for (let date = first; !date.isAfter(last); date = date.plusDays(1)) {
    if (days.length === MOST_DAYS) {
      const message = `The days run from ${from} to ${to}, expected at most ${MOST_DAYS}`;
      return fail(zoneProblem('calendar-days', message, 'Plan less at a time.'));
    }
    days.push(dayOf(date, zone.value, hours));
  }
  return succeed({ zone: zoneName, days, offsets: offsetsFrom(days, zone.value) });
}

/** An ISO date so many days before or after another. */
export const dateBeside = (isoDate: string, days: number): string =>
  LocalDate.parse(isoDate).plusDays(days).toString();
