/**
 * How long are hands at an order, and how long is the oven on, if it were the only one? Hands-on minutes by the
 * kitchen's own times, the road both ways, waiting left out; oven loads as they go onto the shelves, the oven heated
 * once for each temperature. Shopping serves the whole week and is left to the overhead.
 */

import { quantiseRatio } from '../../domain/quantise.ts';
import type { KitchenTimes } from '../../domain/times.ts';
import type { OvenRoom, WorkSettings } from '../../domain/work-settings.ts';
import { goTogether, groupBatches, type OvenRules, ovenMemory } from '../oven/index.ts';
import { gathered, makeBatches } from '../timeline/batches.ts';
import { outings } from '../timeline/outings.ts';
import type { StepKind } from '../timeline/plan.types.ts';
import { boreStages, driveBackMin, orderStages, restStages, tierStages } from '../timeline/process.ts';
import { cakesOf, type DummyWork, type OrderWork, type Work, type WorkRoom } from '../timeline/work.ts';

/** One kind of hands-on work in an order; `line-tins` is not a step of its own in a timetable. */
export interface Job {
  kind: StepKind | 'line-tins';
  /** How often it is done. */
  count: number;
  minutes: number;
}

export interface EffortLoad {
  ovenC: number;
  /** Until the last tin is due, as every paper says it. */
  bakeMin: number;
  /** With taking it out: as long as the oven is on for it. */
  minutes: number;
  /** How often the door is opened to take some of it out. */
  outings: number;
  tins: number;
}

export interface Effort {
  jobs: Job[];
  handsOnMin: number;
  loads: EffortLoad[];
  /** Times the oven is brought up to heat. */
  heatings: number;
  ovenKwh: number;
}

type Room = Pick<WorkRoom, 'times' | 'calendar'> & { work: WorkSettings };

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

/** Jobs of one kind as one entry, in the order in which they first come. */
function gatheredJobs(jobs: readonly Job[]): Job[] {
  const found = new Map<Job['kind'], Job>();
  for (const { kind, count, minutes } of jobs) {
    const before = found.get(kind) ?? { kind, count: 0, minutes: 0 };
    found.set(kind, { kind, count: before.count + count, minutes: before.minutes + minutes });
  }
  return [...found.values()].filter(({ minutes }) => minutes > 0);
}

const job = (kind: Job['kind'], count: number, eachMin: number): Job => ({
  kind,
  count,
  minutes: count * eachMin,
});

function finishJobs(orders: readonly OrderWork[], times: KitchenTimes): Job[] {
  return orders.flatMap(({ tiers, dummies = [] }) => {
    const made = new Map(
      [...tiers, ...dummies].flatMap(({ finishes }) =>
        finishes.map(({ finish }) => [finish.id, finish.kind]),
      ),
    );
    return [...made.values()].map((kind) =>
      job('make-finish', times.makeMin[kind] > 0 ? 1 : 0, times.makeMin[kind]),
    );
  });
}

function bowlJobs({ bowlfuls }: Work, times: KitchenTimes): Job[] {
  return bowlfuls.flatMap(({ method }) => [
    job('weigh-out', 1, times.weighOutMin),
    job('mix', 1, times.mixMin[method]),
    job('wash-bowl', 1, times.washBowlMin),
  ]);
}

/** Stages of one tier as jobs. */
const stageJobs = (tier: DummyWork, times: KitchenTimes): Job[] =>
  tierStages(tier, times).map(({ kind, minutes }) => ({ kind, count: timesOf(tier, kind), minutes }));

/** How often a stage is done: for every cake, or for every piece that is topped. */
const timesOf = (tier: DummyWork, kind: Job['kind']): number =>
  kind === 'top' ? (tier.small?.pieces ?? cakesOf(tier)) : cakesOf(tier);

function cakeJobs({ tiers, dummies = [] }: OrderWork, times: KitchenTimes): Job[] {
  const baked = tiers.flatMap((tier) => [
    job('line-tins', tier.count, times.lineTinMin),
    job('fill-tins', tier.count, times.fillTinMin),
    job('turn-out', tier.count, times.turnOutMin),
    ...restStages(tier, tier.count, times).map(({ kind, minutes }) => ({ kind, count: tier.count, minutes })),
    ...stageJobs(tier, times),
  ]);
  return [...baked, ...dummies.flatMap((dummy) => stageJobs(dummy, times))];
}

function effortLoads(work: Work, room: Room): EffortLoad[] {
  const { times } = room;
  const rules: OvenRules = { memory: ovenMemory(room.work.ovenRoom), togetherMin: times.bakeTogetherMin };
  const find = (filled: Work['bowlfuls'][number]['tins'][number]) => {
    const order = work.orders.find(({ id }) => id === filled.orderId);
    const tier = order?.tiers.find(({ id }) => id === filled.tierId);
    if (order === undefined || tier === undefined)
      throw new Error(`No tier ${filled.tierId} in ${filled.orderId}.`);
    return { order, tier, count: filled.count };
  };
  const { batches } = makeBatches(work.bowlfuls, find, { room, rules, neededBy: ({ handOver }) => handOver });
  const ovens = batches.map(({ oven }) => oven);
  // What does not go into the oven at all is told by the timetable; here it still costs a load of its own.
  const fits = ovens.filter((oven) => goTogether([oven], rules));
  const groups = [
    ...groupBatches(fits, rules).groups,
    ...ovens.filter((oven) => !fits.includes(oven)).map((oven) => [oven]),
  ];
  return groups.map((group) => {
    const tins = gathered(batches.filter(({ oven }) => group.includes(oven)).flatMap((batch) => batch.tins));
    const outs = outings(tins, times, times.washBowlMin);
    return {
      ovenC: group[0]?.ovenC ?? 0,
      bakeMin: Math.max(...group.map(({ byMin }) => byMin)),
      minutes: (outs.at(-1)?.at ?? 0) + times.ovenDoorMin,
      outings: outs.length,
      tins: sum(tins.map(({ count }) => count)),
    };
  });
}

function kwhOf(loads: readonly EffortLoad[], heatings: number, room: OvenRoom): number {
  const hours = sum(loads.map(({ minutes }) => minutes)) / 60;
  return quantiseRatio(heatings * room.kwhToHeat + hours * room.kwhPerHour);
}

/** Hands-on time and oven of some work done by itself. */
export function effortOf(work: Work, room: Room): Effort {
  const { times } = room;
  const loads = effortLoads(work, room);
  const heatings = new Set(loads.map(({ ovenC }) => ovenC)).size;
  const jobs = gatheredJobs([
    ...bowlJobs(work, times),
    ...work.orders.flatMap((order) => cakeJobs(order, times)),
    job('oven-in', loads.length, times.ovenDoorMin),
    job('oven-out', sum(loads.map(({ outings: out }) => out)), times.ovenDoorMin),
    ...finishJobs(work.orders, times),
    ...work.orders.flatMap((order) =>
      [...boreStages(order, times), ...orderStages(order, times)].map(({ kind, minutes }) => ({
        kind,
        count: 1,
        minutes,
      })),
    ),
    ...work.orders.map((order) => job('drive-back', 1, driveBackMin(order, times))),
  ]);
  return {
    jobs,
    handsOnMin: sum(jobs.map(({ minutes }) => minutes)),
    loads,
    heatings,
    ovenKwh: kwhOf(loads, heatings, room.work.ovenRoom),
  };
}
