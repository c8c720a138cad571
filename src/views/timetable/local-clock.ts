/** Instants as a kitchen's clock and calendar show them, read off the days that came as data. */
import type { Calendar, CalendarDay, Minute } from '../../domain/calendar.ts';
import type { TimetableWords } from '../../wording/timetable/index.ts';

/** Minutes that the local clock is ahead of UTC at an instant. */
function offsetAt({ offsets }: Calendar, minute: Minute): number {
  const found = offsets.findLast(({ fromMinute }) => fromMinute <= minute) ?? offsets[0];
  return found?.offsetMin ?? 0;
}

/** Minutes after midnight on the local clock, 0 to 1439. */
function minuteOfDay(calendar: Calendar, minute: Minute): number {
  const local = minute + offsetAt(calendar, minute);
  return local - Math.floor(local / 1440) * 1440;
}

/** Undefined beyond the days of the calendar. */
export const dayOf = ({ days }: Calendar, minute: Minute): CalendarDay | undefined =>
  days.find(({ startMinute, endMinute }) => startMinute <= minute && minute < endMinute);

export const clockText = (calendar: Calendar, minute: Minute, words: TimetableWords): string =>
  words.clock(minuteOfDay(calendar, minute));

const weekdayText = ({ weekday }: CalendarDay, { weekdays }: TimetableWords): string =>
  weekdays[weekday - 1] ?? '';

/** 'Thursday 22 October'. */
export function dayText(day: CalendarDay, words: TimetableWords): string {
  const [, month = 0, dayOfMonth = 0] = day.isoDate.split('-').map(Number);
  return words.day(weekdayText(day, words), dayOfMonth, month);
}

/** '18:42', with the weekday when it is another day than the instant it is told at. */
export function untilText(calendar: Calendar, until: Minute, toldAt: Minute, words: TimetableWords): string {
  const clock = clockText(calendar, until, words);
  const day = dayOf(calendar, until);
  if (day === undefined || day === dayOf(calendar, toldAt)) return clock;
  return words.untilOn(clock, weekdayText(day, words));
}
