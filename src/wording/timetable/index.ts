/** The words of timetables by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbTimetable } from './en-gb.ts';
import { enUsTimetable } from './en-us.ts';
import type { TimetableWords } from './timetable-words.ts';

export { formatDuration } from './duration.ts';
export type { RowKind, RowNames, TimetableWords, WaitKind } from './timetable-words.ts';

const LOCALES: Record<Locale, TimetableWords> = { 'en-GB': enGbTimetable, 'en-US': enUsTimetable };

/** The words of timetables in a locale. */
export const timetableWordsFor = (locale: Locale): TimetableWords => LOCALES[locale];
