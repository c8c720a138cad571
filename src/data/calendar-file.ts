/** A timetable as a calendar for the telephone: every piece of work by hand, every look, and the hand-over. */
import type { TimetableRow, TimetableView } from '../views/timetable/timetable.types.ts';
import { calendarText, foldedLine, utcStamp } from './calendar-text.ts';

const PRODUCT = '-//Tinwright//Timetable//EN';

/** Name of a kitchen as a domain that nobody can own (RFC 2606, from memory): what makes ids its own. */
function domainOf(kitchenName: string): string {
  const plain = kitchenName
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain || 'kitchen'}.invalid`;
}

function eventLines(row: TimetableRow, view: TimetableView, stamp: string): string[] {
  const { fromMinute, toMinute, what, notes, forText } = row;
  const summary = forText === '' ? what : `${what} (${forText})`;
  return [
    'BEGIN:VEVENT',
    `UID:${view.id}-${row.id}@${domainOf(view.kitchenName)}`,
    `DTSTAMP:${stamp}`,
    `DTSTART:${utcStamp(fromMinute)}`,
    // An event without length has no end: an end must be later than its start.
    ...(toMinute > fromMinute ? [`DTEND:${utcStamp(toMinute)}`] : []),
    `SUMMARY:${calendarText(summary)}`,
    ...(notes.length > 0 ? [`DESCRIPTION:${calendarText(notes.join('\n'))}`] : []),
    `TRANSP:${row.handsOn ? 'OPAQUE' : 'TRANSPARENT'}`,
    'END:VEVENT',
  ];
}

/** The text of the .ics file; dated by the view's edition, so the same order gives the same bytes. */
export function calendarFile(view: TimetableView): string {
  const stamp = `${view.edition.replaceAll('-', '')}T000000Z`;
  const rows = view.days.flatMap(({ rows: some }) => some);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${PRODUCT}`,
    'CALSCALE:GREGORIAN',
    `NAME:${calendarText(view.title)}`,
    ...rows.flatMap((row) => eventLines(row, view, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map(foldedLine).join('');
}
