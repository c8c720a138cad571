/**
 * When is what done? All work of one or more orders on one mixer, one oven and so many hands, backwards from the
 * hand-overs, as late and so as fresh as it goes, with nights kept free.
 *
 * Oven loads are settled first (fewest, then shortest). Then several passes from the hand-overs backwards, each
 * with its own idea of what presses most; the one that begins latest is kept, and how far it may be from the best
 * is told by a proven bound. No clock: whether a start lies in the past is judged against `notBefore`.
 */
import type { Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { groupBatches, type OvenMemory, type OvenRules, ovenMemory } from '../oven/index.ts';
import type { Placed } from './activity.types.ts';
import { type Awake, awakeHours } from './awake.ts';
import { earlierOnes, placeBackwards } from './backwards.ts';
import { type Batches, makeBatches, type TierFinder } from './batches.ts';
import { leastHeads, leastSpan } from './bound.ts';
import { emitLoads, emitSteps, renamedLoads } from './emit-steps.ts';
import { neededBy } from './needed-by.ts';
import { buildNetwork, type Network } from './network.ts';
import { resources } from './place-activity.ts';
import type { WeekPlan } from './plan.types.ts';
import { ageWarnings, batchProblems, stuckProblem, workProblems } from './plan-problems.ts';
import { pressingRules } from './pressing.ts';
import type { Work, WorkRoom } from './work.ts';

/** Answers about the oven may be kept from one question to the next. */
export interface PlanOptions {
  memory?: OvenMemory;
  /** Ideas of what presses most that are tried; more take longer and may begin later. Default 12. */
  passes?: number;
}

const USUAL_PASSES = 12;

function tierFinder({ orders }: Work): TierFinder {
  const known = new Map(
    orders.flatMap((order) =>
      order.tiers.map((tier) => [`${order.id} ${tier.id}`, { order, tier }] as const),
    ),
  );
  return ({ orderId, tierId, count }) => {
    const found = known.get(`${orderId} ${tierId}`);
    if (found === undefined) throw new Error(`no tier ${tierId} in order ${orderId}`);
    return { ...found, count };
  };
}

function batchesOf(work: Work, room: WorkRoom, rules: OvenRules, awake: Awake): Batches {
  const latestOut = new Map(
    work.orders.flatMap((order) =>
      order.tiers.map((tier) => [tier, neededBy(order, tier, room.times, awake)] as const),
    ),
  );
  return makeBatches(work.bowlfuls, tierFinder(work), {
    room,
    rules,
    neededBy: (_, tier) => latestOut.get(tier) ?? Number.NEGATIVE_INFINITY,
  });
}

/** What a plan is judged by: its first step, then how long the cakes wait for their hand-overs. */
interface Worth {
  begin: number;
  fresh: number;
}

function worthOf(placed: readonly Placed[], { loads }: Network): Worth {
  return {
    begin: Math.min(...placed.map(({ start }) => start)),
    fresh: loads.reduce((sum, { activity }) => sum + (placed[activity]?.start ?? 0), 0),
  };
}

const isBetter = (a: Worth, b: Worth): boolean =>
  a.begin > b.begin || (a.begin === b.begin && a.fresh > b.fresh);

/**
 * The timetable, or why there is none: work that does not fit any working day, tins that do not fit the oven,
 * batter that would stand too long, a calendar that begins too late.
 */
export function planWeek(work: Work, room: WorkRoom, options: PlanOptions = {}): Result<WeekPlan> {
  const wrong = workProblems(work);
  if (wrong.length > 0) return fail(...wrong);
  const awake = awakeHours(room.calendar);
  const memory = options.memory ?? ovenMemory(room.work.ovenRoom);
  const rules = { memory, togetherMin: room.times.bakeTogetherMin };
  const { batches, warnings } = batchesOf(work, room, rules, awake);
  const unbakeable = batchProblems(batches, rules);
  if (unbakeable.length > 0) return fail(...unbakeable);
  const byId = new Map(batches.map((batch) => [batch.oven.id, batch]));
  const grouping = groupBatches(
    batches.map(({ oven }) => oven),
    rules,
  );
  const groups = grouping.groups.map((group) => group.flatMap(({ id }) => byId.get(id) ?? []));
  const network = buildNetwork(work.orders, groups, memory, room);
  const timed = bestPass(work, network, room, awake, options.passes ?? USUAL_PASSES);
  if (!timed.ok) return timed;
  const { placed, least, spanMin } = timed.value;
  const loads = emitLoads(network, placed, room);
  const named = renamedLoads(emitSteps(network, placed, loads), loads);
  const bound = {
    spanMin,
    leastSpanMin: least.spanMin,
    gap: least.spanMin > 0 ? Math.round(((spanMin - least.spanMin) / least.spanMin) * 1e6) / 1e6 : 0,
    from: least.from,
    loads: loads.length,
    leastLoads: grouping.leastLoads,
    loadsProven: grouping.proven,
  };
  return succeed({ ...named, bound, warnings: [...warnings, ...ageWarnings(work, room, named)] });
}

interface Timed {
  placed: Placed[];
  least: ReturnType<typeof leastSpan>;
  spanMin: number;
}

function bestPass(work: Work, network: Network, room: WorkRoom, awake: Awake, passes: number): Result<Timed> {
  const { activities } = network;
  const owned = new Map(
    work.orders.flatMap(({ tiers }) => tiers.map(({ tin }) => [tin.id, Math.max(1, tin.owned)] as const)),
  );
  const fresh = () => resources(awake, room.work.hands, owned);
  const earlier = earlierOnes(activities);
  const alone = placeBackwards(
    activities,
    earlier,
    activities.map(() => 0),
    'endless',
    fresh,
  );
  if (!alone.ok) return fail(stuckProblem(alone.stuck, work, room));
  const least = leastSpan(activities, earlier, alone.placed, awake, room.work.hands);
  const end = Math.max(...work.orders.map(({ handOver }) => handOver));
  let best: { placed: Placed[]; worth: Worth } | null = null;
  let stuck: Problem | null = null;
  for (const pressing of pressingRules(activities, leastHeads(activities, earlier), alone.placed, passes)) {
    const pass = placeBackwards(activities, earlier, pressing, fresh(), fresh);
    if (!pass.ok) {
      stuck ??= stuckProblem(pass.stuck, work, room);
      continue;
    }
    const worth = worthOf(pass.placed, network);
    if (best === null || isBetter(worth, best.worth)) best = { placed: pass.placed, worth };
    if (end - best.worth.begin <= least.spanMin) break;
  }
  if (best === null) return fail(...(stuck ? [stuck] : []));
  return succeed({ placed: best.placed, least, spanMin: end - best.worth.begin });
}
