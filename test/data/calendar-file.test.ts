/** Calendar files, read back by a general iCalendar parser. */
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarFile } from '../../src/data/calendar-file.ts';
import { calendarText, foldedLine, utcStamp } from '../../src/data/calendar-text.ts';
import { timetableCsv } from '../../src/data/timetable-csv.ts';
import { sampleTimetable } from '../samples/timetable.ts';

const fair = sampleTimetable('fair');
const text = calendarFile(fair);

function events(file: string): InstanceType<typeof ICAL.Event>[] {
  const calendar = new ICAL.Component(ICAL.parse(file));
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

const instant = (event: InstanceType<typeof ICAL.Event>): string => event.startDate.toJSDate().toISOString();

/** As a telephone in London shows it. */
const inLondon = (event: InstanceType<typeof ICAL.Event>): string =>
  event.startDate.toJSDate().toLocaleString('en-GB', {
    timeZone: 'Europe/London',
    weekday: 'short',
    hour: '2-digit',
    minute: '2-digit',
  });

describe('a calendar file', () => {
  it('holds every line of the day sheet, bowls and switches too', () => {
    const rows = fair.days.flatMap((day) => day.rows);
    expect(rows.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['wash-bowl', 'oven-on']));
    const found = events(text);
    expect(found).toHaveLength(rows.length);
    rows.forEach((row, at) => {
      expect(found[at]?.summary).toBe(`${row.what} (${row.forText})`);
      expect(found[at]?.startDate.toUnixTime()).toBe(row.fromMinute * 60);
      expect(found[at]?.endDate.toUnixTime()).toBe(row.toMinute * 60);
      expect(found[at]?.description ?? '').toBe(row.notes.join('\n'));
    });
  });

  it('keeps its clock times over the night when the clock goes back', () => {
    const found = events(text);
    const wrap = found.find(({ summary }) => summary.startsWith('Wrap'));
    const handOver = found.find(({ summary }) => summary.startsWith('Hand over'));
    expect(wrap && instant(wrap)).toBe('2026-10-24T19:50:00.000Z');
    expect(wrap && inLondon(wrap)).toBe('Sat 20:50');
    expect(handOver && instant(handOver)).toBe('2026-10-25T09:30:00.000Z');
    expect(handOver && inLondon(handOver)).toBe('Sun 09:30');
  });

  it('has ids of its own and the edition for its date', () => {
    const found = events(text);
    expect(new Set(found.map(({ uid }) => uid)).size).toBe(found.length);
    expect(found[0]?.uid).toBe('fair-shop-1@the-sample-kitchen.invalid');
    expect(text).toContain('DTSTAMP:20261001T000000Z\r\n');
  });

  it('ends every line with CRLF and is never over 75 octets wide', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  });

  it('of a whole week is read back too', () => {
    expect(events(calendarFile(sampleTimetable())).length).toBeGreaterThan(60);
  });
});

describe('lines and text', () => {
  it('fold between letters, not inside one', () => {
    const line = `SUMMARY:${'crème brûlée – ½ '.repeat(12)}🎂${'é'.repeat(80)}`;
    const folded = foldedLine(line);
    for (const part of folded.split('\r\n')) expect(Buffer.byteLength(part)).toBeLessThanOrEqual(75);
    expect(folded.replaceAll('\r\n ', '').trimEnd()).toBe(line.trimEnd());
  });

  it('come back as they were after escaping', () => {
    const words = 'Butter, eggs; 50\\50 \u0007mix\nand\r\nmore: "now"';
    const file = [
      'BEGIN:VCALENDAR',
      'BEGIN:VEVENT',
      `SUMMARY:${calendarText(words)}`,
      'END:VEVENT',
      'END:VCALENDAR',
    ]
      .map(foldedLine)
      .join('');
    expect(events(file)[0]?.summary).toBe('Butter, eggs; 50\\50 mix\nand\nmore: "now"');
  });

  it('an instant is told in UTC', () => {
    expect(utcStamp(Date.UTC(2026, 10, 28, 14, 5) / 60_000)).toBe('20261128T140500Z');
  });
});

it('the same timetable as CSV has a record a line', () => {
  const lines = timetableCsv(fair).trimEnd().split('\r\n');
  expect(lines).toHaveLength(1 + fair.days.flatMap(({ rows }) => rows).length);
  expect(lines[0]).toBe('date,from,to,minutes,hands_on,what,notes,order,oven_load,from_utc_minute');
  expect(lines.at(-1)).toBe('2026-10-25,09:30,10:15,45,yes,Drive back,,R-1044,,29882010');
  expect(lines.at(-2)).toBe('2026-10-25,09:30,09:30,0,no,Hand over,Loaves for the fair,R-1044,,29882010');
});
