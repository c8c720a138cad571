/**
 * When is a cold cake wrapped? All other work is put as late as it goes; a cake that stands bare dries, so each wrap
 * is moved forward to the first instant at which its cake is cold and a pair of hands is free in working hours.
 * Minutes. Common practice, no source.
 */
import type { Minute } from '../../domain/calendar.ts';
import type { Activity, Placed } from './activity.types.ts';
import { book, freeLane, release } from './lane.ts';
import { firstFree, nextOnGrid, type Resources } from './place-activity.ts';

const isWrap = ({ parts }: Activity): boolean => parts[0]?.kind === 'wrap';

/** From when everything before an activity is over, its waiting included. */
function readyAt(
  id: number,
  before: readonly number[],
  activities: readonly Activity[],
  placed: readonly Placed[],
): Minute {
  const ends = before.flatMap((earlier) => {
    const [activity, place] = [activities[earlier], placed[earlier]];
    if (activity === undefined || place === undefined) return [];
    return activity.next
      .filter((next) => next.activity === id)
      .map(({ tail, waitMin }) => {
        if (tail === null) return place.start + activity.minutes + waitMin;
        return (place.tails[tail] ?? place.start) + (activity.tails[tail]?.minutes ?? 0) + waitMin;
      });
  });
  return Math.max(...ends);
}

/** First instant on the clock's five minutes with hands free and awake; null when there is none. */
function firstOnGrid(minutes: number, readyFrom: Minute, free: Resources): Minute | null {
  let at = nextOnGrid(readyFrom);
  for (;;) {
    const from = firstFree(minutes, at, freeLane(), free);
    if (from === null || from === at) return from;
    at = nextOnGrid(from);
  }
}

/** The same places with every wrap as early as it goes; `free` is what the places have left. */
export function withEarlyWraps(
  activities: readonly Activity[],
  earlier: readonly number[][],
  placed: readonly Placed[],
  free: Resources,
): Placed[] {
  const moved = [...placed];
  const wraps = activities.filter(isWrap);
  // A wrap that moves leaves its place to others: again, until none moves.
  for (let isMoving = true; isMoving; ) {
    isMoving = false;
    for (const { id, minutes } of wraps) {
      const start = moved[id]?.start;
      if (start === undefined) continue;
      release(free.hands, start, start + minutes);
      const first = firstOnGrid(minutes, readyAt(id, earlier[id] ?? [], activities, moved), free);
      const at = first === null ? start : Math.min(first, start);
      book(free.hands, 1, at, at + minutes);
      moved[id] = { start: at, tails: [] };
      isMoving ||= at < start;
    }
  }
  return moved;
}
