/** One day as bars: what hands, mixer and oven do, and how each order waits and is worked on. */
import type { Step } from '../../compute/timeline/plan.types.ts';
import type { CalendarDay } from '../../domain/calendar.ts';
import { clockText, dayText } from './local-clock.ts';
import { isShown } from './rows.ts';
import type { Bar, BarTone, DayBars, Lane, TimetableRow } from './timetable.types.ts';
import type { TimetableSource } from './timetable-input.ts';

interface Span {
  from: number;
  to: number;
}

const TICK_MIN = 120;
const quantise = (share: number): number => Math.round(share * 10_000) / 10_000;

/** The working day, or as much more as is used of the day. */
function widthOf(day: CalendarDay, rows: readonly TimetableRow[]): Span {
  const from = Math.min(day.workFromMinute, ...rows.map(({ fromMinute }) => fromMinute));
  const to = Math.max(day.workToMinute, ...rows.map(({ toMinute }) => toMinute));
  return { from, to: Math.min(to, day.endMinute) };
}

function barOf({ from, to }: Span, width: Span, tone: BarTone, text: string): Bar[] {
  const begin = Math.max(from, width.from);
  const end = Math.min(to, width.to);
  if (end <= begin) return [];
  const all = width.to - width.from;
  return [{ from: quantise((begin - width.from) / all), to: quantise((end - width.from) / all), tone, text }];
}

function rowBars(rows: readonly TimetableRow[], width: Span, source: TimetableSource): Bar[] {
  return rows.flatMap(({ fromMinute, toMinute, what, from, to }) =>
    barOf({ from: fromMinute, to: toMinute }, width, 'hands', source.words.barText(what, from, to)),
  );
}

/** Stretches between the first and the last of an order's steps in which nobody's hands are at it. */
function orderLane(orderId: string, name: string, width: Span, source: TimetableSource): Lane {
  const steps = source.plan.steps.filter(
    ({ orderIds, kind }) => orderIds.includes(orderId) && kind !== 'shop',
  );
  const begin = Math.min(...steps.map(({ from }) => from));
  const end = source.orders.find(({ id }) => id === orderId)?.handOver ?? begin;
  const bakes = steps.filter(({ kind }) => kind === 'bake');
  const hands = steps.filter(({ handsOn }) => handsOn);
  const { words } = source;
  const bars = [
    ...barOf({ from: begin, to: end }, width, 'waiting', words.tones.waiting),
    ...bakes.flatMap((bake) => barOf(bake, width, 'heat', words.tones.heat)),
    ...hands.flatMap((step) => barOf(step, width, 'hands', words.tones.hands)),
  ];
  return { name, bars };
}

/** Bars of one day; the order's lanes are left out where there is nothing to see. */
export function dayBars(day: CalendarDay, rows: readonly TimetableRow[], source: TimetableSource): DayBars {
  const { words, room, plan } = source;
  const width = widthOf(day, rows);
  const clock = (minute: number): string => clockText(room.calendar, minute, words);
  const text = ({ from, to }: Step, what: string): string => words.barText(what, clock(from), clock(to));
  const within = plan.steps.filter(
    (step) => isShown(step, source) && step.from < width.to && step.to > width.from,
  );
  const mixer = within.filter((step) => step.mixer);
  const oven = within.filter(({ kind }) => kind === 'bake');
  const ticks: DayBars['ticks'] = [];
  const first = Math.ceil(width.from / 60) * 60;
  for (let at = first; at <= width.to; at += TICK_MIN)
    ticks.push({ at: quantise((at - width.from) / (width.to - width.from)), text: clock(at) });
  const lanes = [
    {
      name: words.lanes.hands,
      bars: rowBars(
        rows.filter(({ handsOn }) => handsOn),
        width,
        source,
      ),
    },
    {
      name: words.lanes.mixer,
      bars: mixer.flatMap((step) => barOf(step, width, 'hands', text(step, words.lanes.mixer))),
    },
    {
      name: words.lanes.oven,
      bars: oven.flatMap((step) =>
        barOf(step, width, 'heat', text(step, words.load(source.loadNumber(step.loadId)))),
      ),
    },
    ...source.orders.map(({ id, reference }) => orderLane(id, reference, width, source)),
  ];
  return {
    ticks,
    lanes: lanes.filter(({ bars }, at) => bars.length > 0 || at === 0),
    alt: words.barsAlt(dayText(day, words)),
  };
}
