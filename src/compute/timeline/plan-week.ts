/**
 * When is what done? All work of one or more orders on one mixer, one oven and so many hands, backwards from the
 * hand-overs, as late and so as fresh as it goes, with nights kept free.
 *
 * Oven loads are settled first (fewest, then shortest). Then several passes from the hand-overs backwards, each
 * with its own idea of what presses most; the one with the least past its keeping is kept, and of these the one that
 * begins latest. How far that may be from the best is told by a proven bound. No clock: whether a start lies in the
 * past is judged against `notBefore`.
 */
import { fail, type Result, succeed } from '../../domain/result.ts';
import { groupBatches, type OvenMemory, type OvenRules, ovenMemory } from '../oven/index.ts';
import { type Awake, awakeHours } from './awake.ts';
import { type Batches, makeBatches, type TierFinder } from './batches.ts';
import { bestPass } from './best-pass.ts';
import { emitLoads, emitSteps, renamedLoads } from './emit-steps.ts';
import { neededBy } from './needed-by.ts';
import { buildNetwork } from './network.ts';
import type { WeekPlan } from './plan.types.ts';
import { ageWarnings, batchProblems, workProblems } from './plan-problems.ts';
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
