/** The timetable of one order or of a week, day by day. */
import type { CalendarDay } from '../../domain/calendar.ts';
import { listInWords } from '../../wording/list.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import { formatDuration } from '../../wording/timetable/index.ts';
import type { Caution, Figure } from '../figure.ts';
import { hotCoreCaution } from '../oven-figures.ts';
import { boundText, loadsText } from './bound-texts.ts';
import { dayBars } from './day-bars.ts';
import { clockText, dayOf, dayText } from './local-clock.ts';
import { ovenPlanView } from './oven-plan.ts';
import { durationFigure, isShown, timetableRows } from './rows.ts';
import type { DayView, TimetableRow, TimetableView } from './timetable.types.ts';
import { type TimetableInput, type TimetableSource, timetableSource } from './timetable-input.ts';

const handsOnMin = (rows: readonly TimetableRow[]): number =>
  rows.reduce((sum, row) => sum + (row.handsOn ? row.toMinute - row.fromMinute : 0), 0);

const DAY_MIN = 1440;

function clockNote({ startMinute, endMinute }: CalendarDay, { words }: TimetableSource): string | null {
  const minutes = endMinute - startMinute;
  if (minutes === DAY_MIN) return null;
  return minutes < DAY_MIN ? words.clocksForward : words.clocksBack;
}

function dayView(day: CalendarDay, all: readonly TimetableRow[], source: TimetableSource): DayView {
  const { words, room } = source;
  const rows = all.filter(({ fromMinute }) => fromMinute >= day.startMinute && fromMinute < day.endMinute);
  const worked = rows.filter(({ handsOn }) => handsOn);
  const minutes = handsOnMin(rows);
  const [first] = worked;
  const end = Math.max(...worked.map(({ toMinute }) => toMinute));
  return {
    isoDate: day.isoDate,
    title: dayText(day, words),
    summary: first
      ? words.daySummary(formatDuration(minutes), first.from, clockText(room.calendar, end, words))
      : words.dayWaiting,
    handsOn: durationFigure(minutes),
    clockNote: clockNote(day, source),
    rows,
    bars: dayBars(day, rows, source),
  };
}

const CHILLED_KINDS = new Set(['cream', 'curd']);

function cautionsOf({ orders, words, kitchen }: TimetableSource): Caution[] {
  const finishes = orders.flatMap(({ tiers }) => tiers.flatMap((tier) => tier.finishes));
  const cold = finishes.filter(({ finish }) => finish.chilled || CHILLED_KINDS.has(finish.kind));
  const coldNames = [...new Set(cold.map(({ finish }) => uncapitalised(finish.name)))];
  const isStacked = orders.some(({ arrangement, tiers }) => arrangement === 'stacked' && tiers.length > 1);
  const { hot, raw, cool, supports, chilled } = words.cautions;
  return [
    { code: 'raw-batter', text: raw },
    { code: 'hot-tins', text: hot },
    ...hotCoreCaution(
      orders.flatMap(({ tiers }) => tiers),
      kitchen.locale,
    ),
    { code: 'cool-first', text: cool },
    ...(coldNames.length > 0
      ? [{ code: 'keep-chilled', text: chilled(listInWords(coldNames, words.and)) }]
      : []),
    ...(isStacked ? [{ code: 'supports', text: supports }] : []),
  ];
}

function ovenMin(source: TimetableSource): number {
  return source.plan.steps
    .filter((step) => step.kind === 'bake' && isShown(step, source))
    .reduce((sum, { from, to }) => sum + to - from, 0);
}

function leadText(rows: readonly TimetableRow[], source: TimetableSource, ovenOn: Figure): string {
  const { words, room } = source;
  const [first] = rows;
  const day = first && dayOf(room.calendar, first.fromMinute);
  const worked = new Set(
    rows.filter(({ handsOn }) => handsOn).map(({ fromMinute }) => dayOf(room.calendar, fromMinute)?.isoDate),
  );
  if (first === undefined || day === undefined) return '';
  return words.lead(
    dayText(day, words),
    first.from,
    formatDuration(handsOnMin(rows)),
    worked.size,
    ovenOn.text,
  );
}

/** All days from the first line to the last hand-over; days on which nothing happens are left out. */
export function timetableView(input: TimetableInput): TimetableView {
  const source = timetableSource(input);
  const { words, room, kitchen, plan } = source;
  const rows = timetableRows(source);
  const days = room.calendar.days.filter(({ startMinute, endMinute }) =>
    rows.some(({ fromMinute }) => fromMinute >= startMinute && fromMinute < endMinute),
  );
  const ovenOn = durationFigure(ovenMin(source));
  return {
    id: input.id,
    title: words.title(input.title),
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    zone: room.calendar.zone,
    lead: leadText(rows, source, ovenOn),
    boundText: boundText(source),
    loadsText: loadsText(source),
    handsOn: durationFigure(handsOnMin(rows)),
    ovenOn,
    days: days.map((day) => dayView(day, rows, source)),
    ovenPlan: ovenPlanView(input),
    cautions: cautionsOf(source),
    warnings: plan.warnings
      .filter(({ orderIds }) => source.orders.some(({ id }) => orderIds.includes(id)))
      .map(({ code, message }) => ({ code, message })),
  };
}
