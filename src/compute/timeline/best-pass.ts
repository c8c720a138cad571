/**
 * Several passes from the hand-overs backwards, each with its own idea of what presses most, and the best of them:
 * the one with the least past its keeping, then the one that begins latest, then the freshest. Where something is
 * past its keeping all the same, a few more passes press for just that.
 */
import type { Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { Placed } from './activity.types.ts';
import type { Awake } from './awake.ts';
import { earlierOnes, placeBackwards } from './backwards.ts';
import { leastHeads, leastSpan } from './bound.ts';
import { withEarlyWraps } from './early-wraps.ts';
import type { Network } from './network.ts';
import { overdueOf } from './overdue.ts';
import { type Resources, resources } from './place-activity.ts';
import { stuckProblem } from './plan-problems.ts';
import { pressingRules } from './pressing.ts';
import type { Work, WorkRoom } from './work.ts';

/** What a plan is judged by. */
interface Worth {
  /** Minutes past their keeping, of all cakes and finishes. */
  overdue: number;
  begin: number;
  /** Larger where cakes wait less for their hand-overs. */
  fresh: number;
}

interface Pass {
  placed: Placed[];
  /** What it takes of hands, mixer, oven and tins. */
  free: Resources;
  worth: Worth;
  /** How much each activity pressed. */
  pressing: number[];
  late: ReadonlySet<number>;
}

const isBetter = (a: Worth, b: Worth): boolean =>
  a.overdue < b.overdue ||
  (a.overdue === b.overdue && (a.begin > b.begin || (a.begin === b.begin && a.fresh > b.fresh)));

export interface Timed {
  placed: Placed[];
  least: ReturnType<typeof leastSpan>;
  spanMin: number;
}

const MOST_URGED = 4;

/** What is past its keeping presses by as much as the whole lasts, on top of what it pressed before. */
const urged = ({ pressing, late }: Pass, spanMin: number): number[] =>
  pressing.map((much, id) => (late.has(id) ? much + spanMin : much));

/** The best placing of a network; `passes` are ideas of what presses most. */
export function bestPass(
  work: Work,
  network: Network,
  room: WorkRoom,
  awake: Awake,
  passes: number,
): Result<Timed> {
  const { activities } = network;
  const owned = new Map(
    work.orders.flatMap(({ tiers }) => tiers.map(({ tin }) => [tin.id, Math.max(1, tin.owned)] as const)),
  );
  const fresh = () => resources(awake, room.work.hands, owned);
  const earlier = earlierOnes(activities);
  const none = activities.map(() => 0);
  const alone = placeBackwards(activities, earlier, none, 'endless', fresh);
  if (!alone.ok) return fail(stuckProblem(alone.stuck, work, room));
  const least = leastSpan(activities, earlier, alone.placed, awake, room.work.hands);
  const end = Math.max(...work.orders.map(({ handOver }) => handOver));
  let best: Pass | null = null;
  let stuck: Problem | null = null;
  const tryIt = (pressing: number[]): void => {
    const free = fresh();
    const pass = placeBackwards(activities, earlier, pressing, free, fresh);
    if (!pass.ok) {
      stuck ??= stuckProblem(pass.stuck, work, room);
      return;
    }
    const { placed } = pass;
    const { minutes, late } = overdueOf(network, placed, work.orders, room);
    const worth = {
      overdue: minutes,
      begin: Math.min(...placed.map(({ start }) => start)),
      fresh: network.loads.reduce((sum, { activity }) => sum + (placed[activity]?.start ?? 0), 0),
    };
    if (best === null || isBetter(worth, best.worth)) best = { placed, free, worth, pressing, late };
  };
  const found = (): Pass | null => best;
  const isDone = (): boolean => {
    const now = found();
    return now !== null && now.worth.overdue === 0 && end - now.worth.begin <= least.spanMin;
  };
  for (const pressing of pressingRules(activities, leastHeads(activities, earlier), alone.placed, passes)) {
    tryIt(pressing);
    if (isDone()) break;
  }
  for (let round = 0; round < MOST_URGED; round += 1) {
    const now = found();
    if (now === null || now.worth.overdue === 0) break;
    tryIt(urged(now, least.spanMin));
    if (found() === now) break;
  }
  const kept = found();
  if (kept === null) return fail(...(stuck === null ? [] : [stuck]));
  const placed = withEarlyWraps(activities, earlier, kept.placed, kept.free);
  return succeed({ placed, least, spanMin: end - kept.worth.begin });
}
