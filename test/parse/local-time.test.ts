/**
 * Local times as instants over the clock changes. Dates of the changes: Europe/London on the last Sundays of March
 * and October at 01:00 UTC (The Summer Time Order 2002, SI 2002/262, from memory); America/New_York on the second
 * Sunday of March and the first of November at 02:00 local (Energy Policy Act of 2005, s. 110, from memory).
 */
import { describe, expect, it } from 'vitest';
import { dateBeside, kitchenCalendar } from '../../src/parse/calendar.ts';
import { minuteOfLocal } from '../../src/parse/local-time.ts';

const utc = (text: string): number => Date.parse(`${text}:00Z`) / 60_000;
const hours = { fromMin: 7 * 60, toMin: 21 * 60 };

function calendar(zone: string, from: string, to: string) {
  const made = kitchenCalendar(zone, hours, from, to);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

const codes = (result: { ok: boolean; problems?: { code: string }[] }): string[] =>
  (result.problems ?? []).map(({ code }) => code);

describe('a local time', () => {
  it.each([
    ['2026-11-28T14:00', 'Europe/London', '2026-11-28T14:00'],
    ['2026-07-04T14:00', 'Europe/London', '2026-07-04T13:00'],
    ['2026-03-29T00:59', 'Europe/London', '2026-03-29T00:59'],
    ['2026-03-29T02:00', 'Europe/London', '2026-03-29T01:00'],
    ['2026-10-25T00:59', 'Europe/London', '2026-10-24T23:59'],
    ['2026-10-25T02:00', 'Europe/London', '2026-10-25T02:00'],
    ['2026-03-08T01:59', 'America/New_York', '2026-03-08T06:59'],
    ['2026-03-08T03:00', 'America/New_York', '2026-03-08T07:00'],
    ['2026-11-01T00:59', 'America/New_York', '2026-11-01T04:59'],
    ['2026-11-01T02:00', 'America/New_York', '2026-11-01T07:00'],
  ])('%s in %s is %s UTC', (local, zone, expected) => {
    expect(minuteOfLocal(local, zone)).toEqual({ ok: true, value: utc(expected) });
  });

  it('means the first when the clock shows it twice', () => {
    expect(minuteOfLocal('2026-10-25T01:30', 'Europe/London')).toEqual({
      ok: true,
      value: utc('2026-10-25T00:30'),
    });
    expect(minuteOfLocal('2026-11-01T01:30', 'America/New_York')).toEqual({
      ok: true,
      value: utc('2026-11-01T05:30'),
    });
  });

  it('is refused when the clock jumps over it, and so are zones and years nobody knows', () => {
    expect(codes(minuteOfLocal('2026-03-29T01:30', 'Europe/London'))).toEqual(['local-time-skipped']);
    expect(codes(minuteOfLocal('2026-03-08T02:30', 'America/New_York'))).toEqual(['local-time-skipped']);
    expect(minuteOfLocal('2026-03-08T02:30', 'Europe/Londn')).toMatchObject({
      problems: [{ code: 'time-zone-unknown', hint: "Did you mean 'Europe/London'?" }],
    });
    expect(codes(minuteOfLocal('2026-02-30T12:00', 'Europe/London'))).toEqual(['local-time-unreadable']);
    expect(codes(minuteOfLocal('2038-02-03T12:00', 'Europe/London'))).toEqual(['local-time-out-of-range']);
  });
});

describe('a calendar', () => {
  it.each([
    ['Europe/London', '2026-03-28', [24, 23, 24]],
    ['Europe/London', '2026-10-24', [24, 25, 24]],
    ['America/New_York', '2026-03-07', [24, 23, 24]],
    ['America/New_York', '2026-10-31', [24, 25, 24]],
  ])('in %s from %s has days of %j hours and shifts the morning with the clock', (zone, from, lengths) => {
    const { days } = calendar(zone, from, dateBeside(from, 2));
    expect(days.map(({ startMinute, endMinute }) => (endMinute - startMinute) / 60)).toEqual(lengths);
    for (const day of days) {
      expect(minuteOfLocal(`${day.isoDate}T07:00`, zone)).toEqual({ ok: true, value: day.workFromMinute });
      expect(minuteOfLocal(`${day.isoDate}T21:00`, zone)).toEqual({ ok: true, value: day.workToMinute });
    }
  });

  it('names weekdays from Monday, and tells when the offset changes', () => {
    const { days, offsets } = calendar('Europe/London', '2026-10-24', '2026-10-26');
    expect(days.map(({ weekday }) => weekday)).toEqual([6, 7, 1]);
    expect(offsets).toEqual([
      { fromMinute: utc('2026-10-23T23:00'), offsetMin: 60 },
      { fromMinute: utc('2026-10-25T01:00'), offsetMin: 0 },
    ]);
  });

  it('is refused for dates in the wrong order, dates that are none, and too many days', () => {
    const made = (from: string, to: string) => codes(kitchenCalendar('UTC', hours, from, to));
    expect(made('2026-10-24', '2026-10-23')).toEqual(['calendar-days']);
    expect(made('2026-02-30', '2026-03-02')).toEqual(['calendar-days']);
    expect(made('2026-01-01', '2030-01-01')).toEqual(['calendar-days']);
  });

  it('may work until midnight', () => {
    const made = kitchenCalendar('Europe/London', { fromMin: 0, toMin: 1440 }, '2026-10-25', '2026-10-25');
    expect(made).toMatchObject({
      value: { days: [{ workFromMinute: utc('2026-10-24T23:00'), workToMinute: utc('2026-10-26T00:00') }] },
    });
  });
});
