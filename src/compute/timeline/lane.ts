/** One thing that can do one job at a time: a pair of hands, the mixer, the oven, a tin. Half-open stretches, min. */
import type { Minute } from '../../domain/calendar.ts';
import { lastBelow } from './awake.ts';

/** Busy stretches, earliest first; they never overlap. */
export interface Lane {
  from: Minute[];
  to: Minute[];
}

export const freeLane = (): Lane => ({ from: [], to: [] });

export const freeLanes = (count: number): Lane[] => Array.from({ length: count }, freeLane);

/** Latest start of a free stretch of so many minutes that ends by then. */
function latestFree({ from, to }: Lane, minutes: number, endBy: Minute): Minute {
  let end = endBy;
  for (let at = lastBelow(from, end); at >= 0; at -= 1) {
    if ((to[at] ?? 0) <= end - minutes) break;
    end = from[at] ?? end;
  }
  return end - minutes;
}

/** Earliest start of a free stretch from then on. */
export function earliestFree({ from, to }: Lane, minutes: number, startAt: Minute): Minute {
  let start = startAt;
  for (let at = Math.max(0, lastBelow(from, start)); at < from.length; at += 1) {
    if ((from[at] ?? 0) >= start + minutes) break;
    start = Math.max(start, to[at] ?? start);
  }
  return start;
}

/** Latest start with which so many of the lanes are free at once, judged one by one. */
export function latestInLanes(lanes: readonly Lane[], count: number, minutes: number, endBy: Minute): Minute {
  const only = lanes[0];
  if (lanes.length === 1 && only && count === 1) return latestFree(only, minutes, endBy);
  const starts = lanes.map((lane) => latestFree(lane, minutes, endBy)).sort((a, b) => b - a);
  return starts[count - 1] ?? Number.NEGATIVE_INFINITY;
}

const isFree = (lane: Lane, from: Minute, to: Minute): boolean => latestFree(lane, to - from, to) === from;

/** Marks a stretch as busy in so many free lanes; an empty stretch takes nothing. */
export function book(lanes: readonly Lane[], count: number, from: Minute, to: Minute): void {
  if (to <= from) return;
  const free = lanes.filter((lane) => isFree(lane, from, to)).slice(0, count);
  if (free.length < count) throw new Error(`${count} wanted from ${from} to ${to}, ${free.length} free`);
  for (const lane of free) {
    const at = lastBelow(lane.from, from) + 1;
    lane.from.splice(at, 0, from);
    lane.to.splice(at, 0, to);
  }
}

/** Frees a stretch that was booked in one of the lanes. */
export function release(lanes: readonly Lane[], from: Minute, to: Minute): void {
  if (to <= from) return;
  for (const lane of lanes) {
    const at = lane.from.indexOf(from);
    if (at < 0 || lane.to[at] !== to) continue;
    lane.from.splice(at, 1);
    lane.to.splice(at, 1);
    return;
  }
  throw new Error(`nothing booked from ${from} to ${to}`);
}
