/**
 * How short can the whole be at best? The longest chain of work and waiting with nights kept free; and for hands,
 * mixer and oven: all work that must be over by some instant takes at least its own working minutes before it, cut
 * up as finely as one likes, and before the first of it comes at least what has to come before any of it.
 */
import type { Minute } from '../../domain/calendar.ts';
import type { Activity, Placed } from './activity.types.ts';
import { type Awake, workedBack } from './awake.ts';
import type { PlanBound } from './plan.types.ts';

export interface LeastSpan {
  spanMin: number;
  from: PlanBound['from'];
}

/** A stretch of one resource: latest end, minutes, and the least that comes before it. */
interface Job {
  by: Minute;
  minutes: number;
  head: number;
}

/** Least minutes from the first step to the start of each activity, sleep left out. */
export function leastHeads(activities: readonly Activity[], earlier: readonly number[][]): number[] {
  const heads: number[] = [];
  const headOf = (id: number): number => {
    const known = heads[id];
    if (known !== undefined) return known;
    let most = 0;
    for (const before of earlier[id] ?? []) {
      const activity = activities[before];
      if (!activity) continue;
      for (const { activity: later, tail, waitMin } of activity.next) {
        if (later !== id) continue;
        const end = tail === null ? activity.minutes : tailEnd(activity, tail);
        most = Math.max(most, headOf(before) + end + waitMin);
      }
    }
    heads[id] = most;
    return most;
  };
  return activities.map(({ id }) => headOf(id));
}

function tailEnd({ tails, minutes }: Activity, at: number): number {
  const tail = tails[at];
  return tail ? tail.after + tail.waitMin + tail.minutes : minutes;
}

type Taken = (part: Activity['parts'][number]) => boolean;

function jobsOf(
  activities: readonly Activity[],
  latest: readonly Placed[],
  heads: readonly number[],
  taken: Taken,
): Job[] {
  return activities.flatMap((activity) => {
    const start = latest[activity.id]?.start ?? 0;
    const head = heads[activity.id] ?? 0;
    return activity.parts.filter(taken).map(({ offset, minutes }) => ({
      by: start + offset + minutes,
      minutes,
      head: head + offset,
    }));
  });
}

function tailJobs(
  activities: readonly Activity[],
  latest: readonly Placed[],
  heads: readonly number[],
): Job[] {
  return activities.flatMap(({ id, tails }) =>
    tails.map(({ after, waitMin, minutes, patienceMin }) => ({
      by: (latest[id]?.start ?? 0) + after + waitMin + patienceMin + 2 * minutes,
      minutes,
      head: (heads[id] ?? 0) + after + waitMin,
    })),
  );
}

function ovenJobs(
  activities: readonly Activity[],
  latest: readonly Placed[],
  heads: readonly number[],
): Job[] {
  return activities.flatMap(({ id, oven, parts }) => {
    const bake = parts.find(({ kind }) => kind === 'bake');
    if (!oven || !bake) return [];
    // Recovery may fall into the night: only the bake itself is sure to take working hours.
    const by = (latest[id]?.start ?? 0) + oven.to;
    return [{ by, minutes: bake.minutes, head: (heads[id] ?? 0) + bake.offset }];
  });
}

/** Latest instant at which the whole can begin as far as one resource goes. */
function latestBegin(jobs: readonly Job[], many: number, awake: Awake): Minute {
  const heads = [...new Set(jobs.map(({ head }) => head))];
  let best = Number.POSITIVE_INFINITY;
  for (const least of heads) {
    const some = jobs.filter(({ head }) => head >= least).sort((a, b) => a.by - b.by);
    let minutes = 0;
    for (const { by, minutes: more } of some) {
      minutes += more;
      best = Math.min(best, workedBack(awake, Math.ceil(minutes / many), by) - least);
    }
  }
  return best;
}

/** `latest` is where everything would lie if nothing were ever busy. */
export function leastSpan(
  activities: readonly Activity[],
  earlier: readonly number[][],
  latest: readonly Placed[],
  awake: Awake,
  hands: number,
): LeastSpan {
  // The span ends with the last hand-over; the way home is after it.
  const before = activities.filter(({ parts }) => parts[0]?.kind !== 'drive-back');
  const end = Math.max(...before.map(({ deadline }) => (Number.isFinite(deadline) ? deadline : 0)));
  const heads = leastHeads(activities, earlier);
  const handJobs = [
    ...jobsOf(activities, latest, heads, (part) => part.handsOn),
    ...tailJobs(activities, latest, heads),
  ];
  const begins: [PlanBound['from'], Minute][] = [
    ['longest chain', Math.min(...latest.map(({ start }) => start))],
    ['hands', latestBegin(handJobs, hands, awake)],
    [
      'mixer',
      latestBegin(
        jobsOf(activities, latest, heads, (part) => part.mixer),
        1,
        awake,
      ),
    ],
    ['oven', latestBegin(ovenJobs(activities, latest, heads), 1, awake)],
  ];
  let best: LeastSpan = { spanMin: 0, from: 'longest chain' };
  for (const [from, begin] of begins) if (end - begin > best.spanMin) best = { spanMin: end - begin, from };
  return best;
}
