/** All work of some orders as activities, each knowing what has to come after it. */
import type { Minute } from '../../domain/calendar.ts';
import type { OvenMemory } from '../oven/index.ts';
import type { Activity, Next, Subject, Waiting } from './activity.types.ts';
import { type BakeBlock, bakeBlock, type Load } from './bake-block.ts';
import type { Batch, BatchBowlful } from './batches.ts';
import type { StepKind } from './plan.types.ts';
import {
  boreStages,
  driveBackMin,
  orderStages,
  restStages,
  type Stage,
  stackIds,
  tierStages,
  waitOf,
} from './process.ts';
import { bowlfulSubject, subjectOf } from './subjects.ts';
import { cakesOf, type DummyWork, type FinishWork, type OrderWork, type WorkRoom } from './work.ts';

export interface Network {
  activities: Activity[];
  loads: { load: Load; activity: number }[];
}

const MIXED_FINISHES = new Set<FinishWork['finish']['kind']>(['buttercream', 'cream', 'royal icing']);

class Builder {
  readonly activities: Activity[] = [];
  readonly loads: Network['loads'] = [];
  readonly room: WorkRoom;

  constructor(room: WorkRoom) {
    this.room = room;
  }

  /** One piece of hands-on work; gives its id. */
  add(
    kind: StepKind,
    subject: Subject,
    minutes: number,
    waits: Waiting[],
    next: Next[],
    options: Extra = {},
  ): number {
    const id = this.activities.length;
    const { mixer = false, awake = true, deadline = Number.POSITIVE_INFINITY } = options;
    const part = { kind, subject, offset: 0, minutes, handsOn: true, mixer, awake, waits };
    this.activities.push({ id, parts: [part], tails: [], holds: [], oven: null, minutes, next, deadline });
    return id;
  }
}

interface Extra {
  mixer?: boolean;
  /** Only in working hours; left out: yes. */
  awake?: boolean;
  deadline?: Minute;
}

const after = (activity: number, waitMin = 0): Next => ({ activity, tail: null, waitMin });

/** First activity of each tier's work after resting, and everything that uses a finish. */
interface OrderEnds {
  tiers: Map<DummyWork, Next | null>;
  users: Map<string, Next[]>;
}

/** Everything that is covered and handed over, baked or not. */
const coveredIn = ({ tiers, dummies = [] }: OrderWork): DummyWork[] => [...tiers, ...dummies];

function subjectOfOrder(order: OrderWork, finishId: Stage['finishId']): Subject {
  const tins = coveredIn(order).map((tier) => ({ order, tier, count: cakesOf(tier) }));
  return { ...subjectOf(tins, null), finishId };
}

/** Hands are on the wheel until they are home, after the working day too: a hand-over is not moved for it. */
function addDriveBack(builder: Builder, order: OrderWork): Next | null {
  const minutes = driveBackMin(order, builder.room.times);
  if (minutes === 0) return null;
  const options = { awake: false, deadline: order.handOver + minutes };
  return after(builder.add('drive-back', subjectOfOrder(order, null), minutes, [], [], options));
}

/** From the hand-over backwards to each tier's first work after resting. */
function addOrder(builder: Builder, order: OrderWork): OrderEnds {
  const { times } = builder.room;
  const deadline = { deadline: order.handOver };
  let first = addDriveBack(builder, order);
  for (const stage of orderStages(order, times).reverse()) {
    const next = first ? [{ ...first, waitMin: waitOf(stage.waits) }] : [];
    const id = builder.add(
      stage.kind,
      subjectOfOrder(order, stage.finishId),
      stage.minutes,
      stage.waits,
      next,
      deadline,
    );
    first = after(id);
  }
  const users = new Map<string, Next[]>();
  const tiers = new Map<DummyWork, Next | null>();
  for (const tier of coveredIn(order)) {
    let later = first;
    for (const stage of tierStages(tier, times).reverse()) {
      const subject = {
        ...subjectOf([{ order, tier, count: cakesOf(tier) }], null),
        finishId: stage.finishId,
      };
      const next = later ? [{ ...later, waitMin: waitOf(stage.waits) }] : [];
      later = after(builder.add(stage.kind, subject, stage.minutes, stage.waits, next));
      for (const finishId of stage.needs) users.set(finishId, [...(users.get(finishId) ?? []), later]);
    }
    tiers.set(tier, later);
  }
  return { tiers, users };
}

/** Each finish made once for the order, before its first use; gives the ids. */
function addFinishes(builder: Builder, order: OrderWork, users: OrderEnds['users']): number[] {
  const { times } = builder.room;
  const covered = coveredIn(order);
  const finishes = covered.flatMap((tier) => tier.finishes.map(({ finish }) => finish));
  return [...users].flatMap(([finishId, uses]) => {
    const finish = finishes.find(({ id }) => id === finishId);
    const minutes = finish ? times.makeMin[finish.kind] : 0;
    if (finish === undefined || minutes === 0) return [];
    const standsMin = times.standsMin[finish.kind];
    const tins = covered
      .filter((tier) => tier.finishes.some((each) => each.finish.id === finishId))
      .map((tier) => ({ order, tier, count: cakesOf(tier) }));
    const waits: Waiting[] = standsMin > 0 ? [{ kind: 'finish-stands', minutes: standsMin }] : [];
    const next = uses.map((use) => ({ ...use, waitMin: standsMin }));
    const subject = { ...subjectOf(tins, null), finishId };
    return [
      builder.add('make-finish', subject, minutes, waits, next, { mixer: MIXED_FINISHES.has(finish.kind) }),
    ];
  });
}

/** Cards and dummies are bored before the first work on any tier of the stack; gives the ids. */
function addBoring(builder: Builder, order: OrderWork, { tiers }: OrderEnds): number[] {
  const stack = new Set(stackIds(order));
  const standing = coveredIn(order).filter(({ id }) => stack.has(id));
  return boreStages(order, builder.room.times).map(({ kind, minutes }) => {
    const next = standing.flatMap((tier) => tiers.get(tier) ?? []);
    return builder.add(kind, subjectOfOrder(order, null), minutes, [], next);
  });
}

/** What has to follow a tier's turning out: wrapping and resting, then its first work. */
function addRest(builder: Builder, block: BakeBlock, ends: Map<OrderWork, OrderEnds>): void {
  const { times } = builder.room;
  block.load.tins.forEach(({ order, tier, count }, at) => {
    let later = ends.get(order)?.tiers.get(tier) ?? null;
    for (const stage of restStages(tier, count, times).reverse()) {
      const subject = subjectOf([{ order, tier, count }], block.load.id);
      const next = later ? [{ ...later, waitMin: waitOf(stage.waits) }] : [];
      later = after(builder.add(stage.kind, subject, stage.minutes, stage.waits, next));
    }
    const tail = block.tailOf[at] ?? 0;
    const coolMin = waitOf(block.activity.tails[tail]?.waits ?? []);
    if (later) block.activity.next.push({ activity: later.activity, tail, waitMin: coolMin });
  });
}

/** Weighing out each bowlful, so long before it is mixed that butter and eggs are soft; gives the ids. */
function addWeighing(builder: Builder, { load, activity }: BakeBlock): number[] {
  const { times } = builder.room;
  return load.bowlfuls.map((each: BatchBowlful, at) => {
    const tins = each.tins.reduce((sum, { count }) => sum + count, 0);
    const minutes = times.weighOutMin + times.lineTinMin * tins;
    const waits: Waiting[] = times.softenMin > 0 ? [{ kind: 'soften', minutes: times.softenMin }] : [];
    const waitMin = times.softenMin - (load.mixAt[at] ?? 0);
    const next = [{ activity: activity.id, tail: null, waitMin }];
    return builder.add('weigh-out', bowlfulSubject(each, load.id), minutes, waits, next);
  });
}

/** Everything from the shopping to the hand-overs. */
export function buildNetwork(
  orders: readonly OrderWork[],
  groups: readonly Batch[][],
  memory: OvenMemory,
  room: WorkRoom,
): Network {
  const builder = new Builder(room);
  const ends = new Map(orders.map((order) => [order, addOrder(builder, order)]));
  const finishes = orders.flatMap((order) =>
    addFinishes(builder, order, ends.get(order)?.users ?? new Map()),
  );
  const bored = orders.flatMap((order) => {
    const own = ends.get(order);
    return own ? addBoring(builder, order, own) : [];
  });
  const weighed = groups.flatMap((group, at) => {
    const id = builder.activities.length;
    const block = bakeBlock(`load-${at + 1}`, id, group, memory, room);
    builder.activities.push(block.activity);
    builder.loads.push({ load: block.load, activity: id });
    addRest(builder, block, ends);
    return addWeighing(builder, block);
  });
  const all = subjectOf(
    orders.flatMap((order) => order.tiers.map((tier) => ({ order, tier, count: tier.count }))),
    null,
  );
  const next = [...finishes, ...bored, ...weighed].map((id) => after(id));
  builder.add('shop', all, room.times.shopMin, [], next);
  return { activities: builder.activities, loads: builder.loads };
}
