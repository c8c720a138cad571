/** The timetable view of the sample week, and of one of its orders. */
import { planWeek } from '../../src/compute/timeline/plan-week.ts';
import type { Locale } from '../../src/domain/kitchen.ts';
import { timetableView } from '../../src/views/timetable/timetable.ts';
import type { TimetableView } from '../../src/views/timetable/timetable.types.ts';
import { BIRTHDAY, FAIR, ROOM, THREE_TIERS, work } from '../compute/timeline/sample-week.ts';

const WEEK = work(THREE_TIERS, BIRTHDAY, FAIR);

export function sampleTimetable(orderId?: string, locale: Locale = 'en-GB'): TimetableView {
  const plan = planWeek(WEEK, ROOM);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return timetableView({
    id: orderId ?? '2026-w43',
    title: WEEK.orders.find(({ id }) => id === orderId)?.title ?? 'week 43',
    kitchen: {
      name: 'The Sample Kitchen',
      edition: '2026-10-01',
      locale,
      oven: { fan: true, dial: 'C', core: 'none', band: false },
    },
    work: WEEK,
    room: ROOM,
    plan: plan.value,
    ...(orderId === undefined ? {} : { orderId }),
  });
}
