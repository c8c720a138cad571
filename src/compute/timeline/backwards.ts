/**
 * One pass from the hand-overs backwards: of all work whose later work has its place, the most pressing is put
 * next, as late as it goes.
 */
import type { Activity, Placed } from './activity.types.ts';
import { type Limits, latestPlace, type Resources, take } from './place-activity.ts';

/** Where everything has been put, by activity; or what found no place in the calendar. */
export type Pass = { ok: true; placed: Placed[] } | { ok: false; stuck: Activity };

/** Ends that what has to follow allows. */
function limitsOf(activity: Activity, placed: readonly (Placed | undefined)[]): Limits {
  const tails = activity.tails.map(() => activity.deadline);
  let whole = activity.deadline;
  for (const { activity: later, tail, waitMin } of activity.next) {
    const by = (placed[later]?.start ?? activity.deadline) - waitMin;
    if (tail === null) whole = Math.min(whole, by);
    else tails[tail] = Math.min(tails[tail] ?? by, by);
  }
  // The whole cannot end later than its tails allow.
  const ends = activity.tails.map(
    ({ after, waitMin, minutes }, at) => (tails[at] ?? whole) - minutes - waitMin - after + activity.minutes,
  );
  return { whole: Math.min(whole, ...ends), tails };
}

/** For each activity, those that it has to follow. */
export function earlierOnes(activities: readonly Activity[]): number[][] {
  const earlier: number[][] = activities.map(() => []);
  for (const { id, next } of activities)
    for (const { activity } of next) if (!earlier[activity]?.includes(id)) earlier[activity]?.push(id);
  return earlier;
}

/** Puts every activity; `pressing` is larger for what is to be put sooner, that is later in time. */
export function placeBackwards(
  activities: readonly Activity[],
  earlier: readonly number[][],
  pressing: readonly number[],
  free: Resources | 'endless',
  fresh: () => Resources,
): Pass {
  const placed: Placed[] = [];
  const waiting = activities.map(({ next }) => new Set(next.map(({ activity }) => activity)).size);
  const open = activities.filter(({ id }) => waiting[id] === 0).map(({ id }) => id);
  const shared = free === 'endless' ? null : free;
  while (open.length > 0) {
    const at = mostPressing(open, pressing);
    const [id = 0] = open.splice(at, 1);
    const activity = activities[id];
    if (activity === undefined) continue;
    const lanes = shared ?? fresh();
    const place = latestPlace(activity, limitsOf(activity, placed), lanes);
    if (place === null) return { ok: false, stuck: activity };
    placed[id] = place;
    if (shared) take(activity, place, shared);
    for (const before of earlier[id] ?? []) {
      waiting[before] = (waiting[before] ?? 0) - 1;
      if (waiting[before] === 0) open.push(before);
    }
  }
  return { ok: true, placed };
}

function mostPressing(open: readonly number[], pressing: readonly number[]): number {
  let best = 0;
  for (let at = 1; at < open.length; at += 1) {
    const [mine, most] = [pressing[open[at] ?? 0] ?? 0, pressing[open[best] ?? 0] ?? 0];
    if (mine > most || (mine === most && (open[at] ?? 0) < (open[best] ?? 0))) best = at;
  }
  return best;
}
