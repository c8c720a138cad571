/** A timetable as records: one a line of the day sheet, instants in UTC and by the kitchen's clock. */
import type { TimetableView } from '../views/timetable/timetable.types.ts';
import { csvText } from './csv.ts';

const HEADER = [
  'date',
  'from',
  'to',
  'minutes',
  'hands_on',
  'what',
  'notes',
  'order',
  'oven_load',
  'from_utc_minute',
];

/** The text of the CSV file. */
export function timetableCsv({ days }: TimetableView): string {
  const records = days.flatMap(({ isoDate, rows }) =>
    rows.map((row) => [
      isoDate,
      row.from,
      row.to,
      row.minutes.value,
      row.handsOn ? 'yes' : 'no',
      row.what,
      row.notes.join(' '),
      row.forText,
      row.loadName,
      row.fromMinute,
    ]),
  );
  return csvText(HEADER, records);
}
