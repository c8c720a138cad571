/**
 * The latest place for an activity: moved back, piece by piece, until hands, mixer, oven and tins are free and
 * nothing hands-on falls into the night. Every move is as small as the piece that asks for it allows.
 */
import type { Minute } from '../../domain/calendar.ts';
import type { Activity, Placed, Tail } from './activity.types.ts';
import { type Awake, earliestAwake, latestAwake, NEVER } from './awake.ts';
import { book, earliestFree, freeLane, freeLanes, type Lane, latestInLanes } from './lane.ts';

/** All that can be taken. Without lanes (`endless`) only sleep stands in the way. */
export interface Resources {
  awake: Awake;
  hands: Lane[];
  mixer: Lane[];
  oven: Lane[];
  tins: Map<string, Lane[]>;
}

export const resources = (awake: Awake, hands: number, tins: ReadonlyMap<string, number>): Resources => ({
  awake,
  hands: freeLanes(hands),
  mixer: freeLanes(1),
  oven: freeLanes(1),
  tins: new Map([...tins].map(([id, owned]) => [id, freeLanes(owned)])),
});

/** Latest ends allowed: of the whole, and of each tail. */
export interface Limits {
  whole: Minute;
  tails: Minute[];
}

const MOST_MOVES = 20_000;

/** Work begins at full five minutes: nobody reads 14:57 off a kitchen clock. */
const GRID_MIN = 5;
const onGrid = (minute: Minute): Minute => Math.floor(minute / GRID_MIN) * GRID_MIN;
export const nextOnGrid = (minute: Minute): Minute => Math.ceil(minute / GRID_MIN) * GRID_MIN;

/** Null when the days of the calendar do not hold it. */
export function latestPlace(activity: Activity, limits: Limits, free: Resources): Placed | null {
  let start = onGrid(limits.whole - activity.minutes);
  for (let moves = 0; moves < MOST_MOVES && start > NEVER; moves += 1) {
    const rigid = rigidStart(activity, start, free);
    if (rigid < start) {
      start = onGrid(rigid);
      continue;
    }
    const tails = tailStarts(activity, start, limits, free);
    if (typeof tails === 'number') {
      start = onGrid(tails);
      continue;
    }
    const held = heldStart(activity, start, tails, free);
    if (held === start) return { start, tails };
    start = onGrid(held);
  }
  return null;
}

/** The start itself when every rigid part is free there, else an earlier one. */
function rigidStart(activity: Activity, start: Minute, free: Resources): Minute {
  let at = start;
  for (const { offset, minutes, handsOn, mixer, awake } of activity.parts) {
    const endBy = at + offset + minutes;
    let latest = endBy - minutes;
    if (awake) latest = Math.min(latest, latestAwake(free.awake, minutes, endBy));
    if (handsOn) latest = Math.min(latest, latestInLanes(free.hands, 1, minutes, endBy));
    if (mixer) latest = Math.min(latest, latestInLanes(free.mixer, 1, minutes, endBy));
    at = Math.min(at, latest - offset);
  }
  const { oven } = activity;
  if (oven) {
    const minutes = oven.to - oven.from;
    at = Math.min(at, latestInLanes(free.oven, 1, minutes, at + oven.to) - oven.from);
  }
  return at;
}

/** Own hands at work, so that a tail does not fall among them. */
function ownHands(activity: Activity, start: Minute, tails: readonly { from: Minute; to: Minute }[]): Lane {
  const lane = freeLane();
  const busy = activity.parts
    .filter(({ handsOn }) => handsOn)
    .map(({ offset, minutes }) => ({ from: start + offset, to: start + offset + minutes }));
  for (const { from, to } of [...busy, ...tails].sort((a, b) => a.from - b.from)) {
    lane.from.push(from);
    lane.to.push(to);
  }
  return lane;
}

/** Starts of the tails, each as early as hands allow; a number when the activity has to begin earlier for them. */
function tailStarts(activity: Activity, start: Minute, limits: Limits, free: Resources): Minute[] | Minute {
  const starts: Minute[] = [];
  const done: { from: Minute; to: Minute }[] = [];
  for (const [at, tail] of activity.tails.entries()) {
    const earliest = start + tail.after + tail.waitMin;
    const own = ownHands(activity, start, done);
    const from = firstFree(tail.minutes, earliest, own, free);
    const latest =
      Math.min(limits.tails[at] ?? limits.whole, earliest + tail.patienceMin + tail.minutes) - tail.minutes;
    if (from === null || from > latest) return earlierFor(tail, start, latest, free);
    starts.push(from);
    done.push({ from, to: from + tail.minutes });
  }
  return starts;
}

/** Both the common hands and the activity's own must be free. */
export function firstFree(
  minutes: number,
  earliest: Minute,
  own: Lane,
  { awake, hands }: Resources,
): Minute | null {
  let at: Minute | null = earliest;
  for (;;) {
    const awakeAt: Minute | null = earliestAwake(awake, minutes, at);
    if (awakeAt === null) return null;
    const mine = earliestFree(own, minutes, awakeAt);
    const next = Math.min(...hands.map((lane) => earliestFree(lane, minutes, mine)));
    if (next === at) return at;
    at = next;
  }
}

/** The latest earlier start with which this tail may find its place. */
function earlierFor(tail: Tail, start: Minute, latest: Minute, free: Resources): Minute {
  const endBy = latest + tail.minutes;
  const slot = Math.min(
    latestAwake(free.awake, tail.minutes, endBy),
    latestInLanes(free.hands, 1, tail.minutes, endBy),
  );
  return Math.min(start - 1, slot - tail.waitMin - tail.after);
}

const lastEnd = (activity: Activity, which: readonly number[], tails: readonly Minute[]): Minute =>
  Math.max(...which.map((at) => (tails[at] ?? 0) + (activity.tails[at]?.minutes ?? 0)));

/** The start itself when the tins are free from their filling to their washing, else an earlier one. */
function heldStart(activity: Activity, start: Minute, tails: readonly Minute[], free: Resources): Minute {
  let at = start;
  for (const { tinId, count, from, untilTails } of activity.holds) {
    const until = lastEnd(activity, untilTails, tails);
    const minutes = until - (start + from);
    const latest = latestInLanes(free.tins.get(tinId) ?? [], count, minutes, until);
    at = Math.min(at, start - (start + from - latest));
  }
  return at;
}

/** Takes what a placed activity uses. */
export function take(activity: Activity, { start, tails }: Placed, free: Resources): void {
  for (const { offset, minutes, handsOn, mixer } of activity.parts) {
    const [from, to] = [start + offset, start + offset + minutes];
    if (handsOn) book(free.hands, 1, from, to);
    if (mixer) book(free.mixer, 1, from, to);
  }
  activity.tails.forEach(({ minutes }, at) => {
    const from = tails[at] ?? start;
    book(free.hands, 1, from, from + minutes);
  });
  const { oven } = activity;
  if (oven) book(free.oven, 1, start + oven.from, start + oven.to);
  for (const { tinId, count, from, untilTails } of activity.holds) {
    const until = lastEnd(activity, untilTails, tails);
    book(free.tins.get(tinId) ?? [], count, start + from, until);
  }
}
