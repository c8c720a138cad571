/** A timetable and its oven plan as parts of a page: words and drawings ready for templates/parts/timetable.njk. */
import type { Locale } from '../domain/kitchen.ts';
import type { DayView, OvenLoadView, TimetableView } from '../views/timetable/timetable.types.ts';
import { type TimetableWords, timetableWordsFor } from '../wording/timetable/index.ts';
import { dayBarsSvg } from './day-bars-svg.ts';
import { shelfSvg } from './shelf-svg.ts';

export interface TimetablePart extends Omit<TimetableView, 'days' | 'ovenPlan'> {
  words: Pick<TimetableWords, 'table' | 'tones' | 'timetable' | 'daySheet' | 'ovenPlan' | 'calendar'>;
  /** Whether whose a line is has to be told. */
  showsOrder: boolean;
  days: (Omit<DayView, 'bars'> & { svg: string })[];
  ovenPlan: Omit<TimetableView['ovenPlan'], 'loads'> & {
    loads: (Omit<OvenLoadView, 'shelves'> & {
      elsewhere: string;
      shelves: { name: string; svg: string }[];
    })[];
  };
}

/** The part for one order's page or a week's. */
export function timetablePart(view: TimetableView, locale: Locale): TimetablePart {
  const { table, tones, timetable, daySheet, ovenPlan, calendar, door, elsewhere } =
    timetableWordsFor(locale);
  const references = new Set(view.days.flatMap(({ rows }) => rows.map(({ forText }) => forText)));
  return {
    ...view,
    words: { table, tones, timetable, daySheet, ovenPlan, calendar },
    showsOrder: references.size > 1,
    days: view.days.map(({ bars, ...day }) => ({ ...day, svg: dayBarsSvg(bars) })),
    ovenPlan: {
      ...view.ovenPlan,
      loads: view.ovenPlan.loads.map((load) => ({
        ...load,
        elsewhere: elsewhere(load.dialOthers),
        shelves: load.shelves.map((shelf) => ({ name: shelf.name, svg: shelfSvg(shelf, door) })),
      })),
    },
  };
}
