/** The lines of a timetable: what is done, with what waits after it, and the hand-overs. */
import type { Step, StepKind } from '../../compute/timeline/plan.types.ts';
import type { OrderWork } from '../../compute/timeline/work.ts';
import { listInWords } from '../../wording/list.ts';
import { orderWordsFor } from '../../wording/orders/index.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import { formatDuration, type WaitKind } from '../../wording/timetable/index.ts';
import type { Figure } from '../figure.ts';
import { clockText } from './local-clock.ts';
import { cakesText, NO_NAMES, rowNames } from './row-names.ts';
import { isWait, notesOf } from './row-notes.ts';
import type { TimetableRow } from './timetable.types.ts';
import type { TimetableSource } from './timetable-input.ts';

/** What is neither waiting nor baking is a line; a kind that the words lack does not compile where they are asked. */
type StepRow = Exclude<StepKind, WaitKind | 'bake'>;

const isRow = (kind: StepKind): kind is StepRow => !isWait(kind) && kind !== 'bake';

/** Wrapping and turning out one cake after the other is one line. */
const JOINED = new Set<StepKind>(['wrap', 'turn-out']);

export const durationFigure = (minutes: number): Figure => ({
  value: minutes,
  unit: 'min',
  text: formatDuration(minutes),
});

/** Steps that are lines, those that go on without a break joined. */
function joinedSteps(steps: readonly Step[]): Step[][] {
  const groups: Step[][] = [];
  for (const step of steps) {
    const last = groups.at(-1)?.at(-1);
    const goesOn =
      last !== undefined &&
      JOINED.has(step.kind) &&
      last.kind === step.kind &&
      last.to === step.from &&
      last.orderIds.join() === step.orderIds.join();
    if (goesOn) groups.at(-1)?.push(step);
    else groups.push([step]);
  }
  return groups;
}

/** A line for the first look at each kind of cake that is in the oven. */
function lookRows(step: Step, source: TimetableSource): TimetableRow[] {
  const { plan, words, room } = source;
  const load = plan.loads.find(({ id }) => id === step.loadId);
  const clock = (minute: number): string => clockText(room.calendar, minute, words);
  const shown = step.tiers.filter(({ orderId }) => source.orders.some(({ id }) => id === orderId));
  return shown.flatMap((ref, at) => {
    const tin = load?.tins.find(({ orderId, tierId }) => orderId === ref.orderId && tierId === ref.tierId);
    if (tin === undefined) return [];
    const instant = { from: tin.firstLook, to: tin.firstLook, handsOn: false };
    const one = { ...step, ...instant, tiers: [ref], orderIds: [ref.orderId] };
    return [
      {
        ...plainRow(one, source),
        id: `look-${step.id}-${at + 1}`,
        kind: 'look',
        what: words.what.look({
          ...rowNames(one, source),
          cakes: cakesText({ tiers: [ref], kind: 'look' }, source),
        }),
        notes: [words.lookAt(clock(tin.expected), clock(tin.by))],
      },
    ];
  });
}

/** Whose it is; 'all' where it is for every one of several orders. An order's own paper names no other. */
function referencesOf(orderIds: readonly string[], { work, words, orders }: TimetableSource): string {
  const some = orders.filter(({ id }) => orderIds.includes(id));
  if (some.length > 1 && some.length === work.orders.length) return words.allOrders;
  return some.map(({ reference }) => reference).join(', ');
}

/** Times, references and load of a step. */
function plainRow(step: Step, source: TimetableSource): Omit<TimetableRow, 'what' | 'notes'> {
  const { words, room } = source;
  return {
    id: step.id,
    kind: step.kind,
    fromMinute: step.from,
    toMinute: step.to,
    from: clockText(room.calendar, step.from, words),
    to: clockText(room.calendar, step.to, words),
    minutes: durationFigure(step.to - step.from),
    forText: referencesOf(step.orderIds, source),
    orderIds: step.orderIds.filter((id) => source.orders.some((order) => order.id === id)),
    handsOn: step.handsOn,
    loadId: step.loadId,
    loadName: step.loadId === null ? null : words.load(source.loadNumber(step.loadId)),
  };
}

function rowOf(group: readonly Step[], waits: readonly Step[], source: TimetableSource): TimetableRow[] {
  const [step] = group;
  const last = group.at(-1);
  if (step === undefined || last === undefined || !isRow(step.kind)) return [];
  const all = { ...step, to: last.to, tiers: group.flatMap(({ tiers }) => tiers) };
  const names = { ...rowNames(step, source), cakes: cakesText(all, source) };
  const what = source.words.what[step.kind](names);
  return [{ ...plainRow(all, source), what, notes: notesOf(group, waits, source) }];
}

/** What is hired out, with the day it is due where one was agreed. */
function hiredText({ hired = [] }: OrderWork, { words, kitchen }: TimetableSource): string {
  const names = hired.map(({ name, backBy }) => {
    const thing = name === null ? words.dummy : uncapitalised(name);
    return backBy === undefined
      ? words.backOpen(thing)
      : words.backBy(thing, orderWordsFor(kitchen.locale).date(backBy));
  });
  return listInWords(names, words.and);
}

/** The hand-over, and what has to come back after it. */
function handOverRows(order: OrderWork, source: TimetableSource): TimetableRow[] {
  const { words } = source;
  const handOver = handOverRow(order, source);
  if (order.hired === undefined) return [handOver];
  const what = words.what['comes-back']({ ...NO_NAMES, hired: hiredText(order, source) });
  const back = { id: `comes-back-${order.id}`, kind: 'comes-back', what, notes: [words.cameBack] };
  return [handOver, { ...handOver, ...back }];
}

function handOverRow(order: OrderWork, source: TimetableSource): TimetableRow {
  const { words, room } = source;
  const at = clockText(room.calendar, order.handOver, words);
  return {
    id: `hand-over-${order.id}`,
    kind: 'hand-over',
    fromMinute: order.handOver,
    toMinute: order.handOver,
    from: at,
    to: at,
    minutes: durationFigure(0),
    what: words.what['hand-over'](NO_NAMES),
    notes: [order.title],
    forText: order.reference,
    orderIds: [order.id],
    handsOn: false,
    loadId: null,
    loadName: null,
  };
}

/** Whether a step is for one of the orders that are shown. */
export const isShown = (step: Step, { orders }: TimetableSource): boolean =>
  step.orderIds.some((id) => orders.some((order) => order.id === id));

/** The way home begins when the cake has been handed over. */
const homeward = ({ kind }: TimetableRow): number => (kind === 'drive-back' ? 1 : 0);

/** Every line, earliest first. */
export function timetableRows(source: TimetableSource): TimetableRow[] {
  const shown = source.plan.steps.filter((step) => isShown(step, source));
  const waits = shown.filter(({ kind }) => isWait(kind));
  const done = joinedSteps(shown.filter(({ kind }) => isRow(kind)));
  const looks = shown.filter(({ kind }) => kind === 'oven-out').flatMap((step) => lookRows(step, source));
  const rows = [
    ...done.flatMap((group) => rowOf(group, waits, source)),
    ...looks,
    ...source.orders.flatMap((order) => handOverRows(order, source)),
  ];
  return rows
    .map((row, at) => ({ row, at }))
    .sort((a, b) => a.row.fromMinute - b.row.fromMinute || homeward(a.row) - homeward(b.row) || a.at - b.at)
    .map(({ row }) => row);
}
