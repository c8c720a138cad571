/**
 * What is mixed in one go and baked in one go? A bowlful, unless its tins do not go into the oven together (heat,
 * shelves, tins owned): then it is mixed in parts. Bowlfuls that share a tin too big for one are one batch.
 */
import { quantiseRatio } from '../../domain/quantise.ts';
import { goTogether, type OvenBatch, type OvenRules, type OvenTin, standingRoom } from '../oven/index.ts';
import { volumeMl } from '../shapes/index.ts';
import type { PlanWarning } from './plan.types.ts';
import type { Bowlful, FilledTins, OrderWork, TierWork, WorkRoom } from './work.ts';

/** Cakes of one tier in a batch. */
export interface BatchTin {
  order: OrderWork;
  tier: TierWork;
  count: number;
  /** Batter in them together, g; left out: as much as they would hold. */
  massG?: number;
}

export interface BatchBowlful {
  bowlful: Bowlful;
  /** Part of it that is mixed for this batch. */
  share: number;
  tins: BatchTin[];
}

export interface Batch {
  bowlfuls: BatchBowlful[];
  tins: BatchTin[];
  oven: OvenBatch;
}

export interface Batches {
  batches: Batch[];
  warnings: PlanWarning[];
}

/** Looks a tier up by its order's and its own id. */
export type TierFinder = (filled: FilledTins) => BatchTin;
export type NeededBy = (order: OrderWork, tier: TierWork) => number;

interface Making {
  room: WorkRoom;
  rules: OvenRules;
  neededBy: NeededBy;
}

/** Bowlfuls in order, those of a divided tin together. */
function linkedBowlfuls(bowlfuls: readonly Bowlful[]): Bowlful[][] {
  const groups: Bowlful[][] = [];
  let open = new Map<string, number>();
  for (const bowlful of bowlfuls) {
    const divided = bowlful.tins.filter(({ ofParts }) => ofParts !== undefined);
    const last = groups.at(-1);
    if (last && divided.some(({ orderId, tierId }) => open.has(`${orderId} ${tierId}`))) last.push(bowlful);
    else {
      groups.push([bowlful]);
      open = new Map();
    }
    for (const { orderId, tierId, count, parts = 1, ofParts = 1 } of divided) {
      const key = `${orderId} ${tierId}`;
      const filled = quantiseRatio((open.get(key) ?? 0) + (count * parts) / ofParts);
      if (Number.isInteger(filled)) open.delete(key);
      else open.set(key, filled);
    }
  }
  return groups;
}

const ovenTin = ({ tier, count }: BatchTin, rules: OvenRules): OvenTin => ({
  tinId: tier.tin.id,
  owned: Math.max(1, tier.tin.owned),
  count,
  footprint: standingRoom(tier.tin, rules.memory),
});

/** Minutes from the first stir until the bowl is clean again. */
function mixingMin({ bowlful, tins }: BatchBowlful, { times }: WorkRoom): number {
  const filled = tins.reduce((sum, { count }) => sum + count, 0);
  return times.mixMin[bowlful.method] + times.fillTinMin * filled + times.washBowlMin;
}

/** How long a bowlful may wait for the oven: bicarbonate does not. */
function standsMin({ method, actsAtOnce }: Bowlful, { work: { batterStandsMin } }: WorkRoom): number {
  return Math.min(
    batterStandsMin[method],
    actsAtOnce ? batterStandsMin.bicarbonate : Number.POSITIVE_INFINITY,
  );
}

function batchOf(id: string, bowlfuls: BatchBowlful[], tins: BatchTin[], making: Making): Batch {
  const { room, rules, neededBy } = making;
  const minutes = bowlfuls.map((each) => mixingMin(each, room));
  const laterMin = minutes.slice(1).reduce((sum, min) => sum + min, 0);
  const stands = bowlfuls.map(({ bowlful }) => standsMin(bowlful, room));
  return {
    bowlfuls,
    tins,
    oven: {
      id,
      ovenC: tins[0]?.tier.ovenC ?? 0,
      tins: tins.map((tin) => ovenTin(tin, rules)),
      byMin: tins.reduce((most, { tier }) => Math.max(most, tier.bake.by), 0),
      mixMin: minutes.reduce((sum, min) => sum + min, 0),
      standsMin: Math.min(...stands) - laterMin,
      neededBy: Math.min(...tins.map(({ order, tier }) => neededBy(order, tier))),
    },
  };
}

/** A bowlful's tins one by one into the first part with room, biggest first. */
function parts(tins: readonly BatchTin[], fits: (some: BatchTin[]) => boolean): BatchTin[][] {
  const found: BatchTin[][] = [];
  const single = tins.flatMap(({ count, massG, ...tin }) =>
    Array.from({ length: count }, () => ({
      ...{ ...tin, count: 1 },
      ...(massG === undefined ? {} : { massG: massG / count }),
    })),
  );
  for (const tin of single.sort((a, b) => volumeMl(b.tier.tin) - volumeMl(a.tier.tin))) {
    const roomy = found.find((part) => fits(gathered([...part, tin])));
    if (roomy) roomy.push(tin);
    else found.push([tin]);
  }
  return found.map(gathered);
}

/** Single tins of one tier as one entry. */
export function gathered(tins: readonly BatchTin[]): BatchTin[] {
  const found: BatchTin[] = [];
  for (const tin of tins) {
    const same = found.find(({ order, tier }) => order === tin.order && tier === tin.tier);
    if (same) {
      same.count += tin.count;
      if (same.massG !== undefined) same.massG += tin.massG ?? 0;
    } else found.push({ ...tin });
  }
  return found;
}

const contents = (tins: readonly BatchTin[]): number =>
  tins.reduce((sum, { tier, count, massG }) => sum + (massG ?? count * volumeMl(tier.tin)), 0);

/** Shares of a bowlful by the batter in its tins; they add up to one. */
function shares(found: readonly BatchTin[][]): number[] {
  const all = contents(found.flat());
  const first = found.slice(1).map((tins) => quantiseRatio(contents(tins) / all));
  return [quantiseRatio(1 - first.reduce((sum, share) => sum + share, 0)), ...first];
}

const splitWarning = (bowlful: Bowlful, count: number): PlanWarning => ({
  code: 'mixed-in-parts',
  message: `${bowlful.name} is mixed in ${count} goes, because its tins do not go into the oven together: the timetable says how much at a time`,
  orderIds: [...new Set(bowlful.tins.map(({ orderId }) => orderId))],
});

/** All batches; each goes into the oven by itself if its tins do at all. */
export function makeBatches(bowlfuls: readonly Bowlful[], find: TierFinder, making: Making): Batches {
  const warnings: PlanWarning[] = [];
  const batches = linkedBowlfuls(bowlfuls).flatMap((group) => {
    const name = group.map(({ id }) => id).join('+');
    const tins = gathered(group.flatMap((bowlful) => wholeTins(bowlful, find)));
    const each = group.map((bowlful) => ({ bowlful, share: 1, tins: bowlful.tins.map(find) }));
    const whole = batchOf(name, each, cleanCounts(tins), making);
    const [bowlful, ...others] = group;
    if (bowlful === undefined || others.length > 0 || goTogether([whole.oven], making.rules)) return [whole];
    const fits = (some: BatchTin[]) =>
      some.every(({ tier }) => tier.ovenC === some[0]?.tier.ovenC) &&
      goTogether([batchOf(name, [{ bowlful, share: 1, tins: some }], some, making).oven], making.rules);
    // Tins of one tier may hold unlike amounts, so they are not gathered first.
    const found = parts(cleanCounts(wholeTins(bowlful, find)), fits);
    warnings.push(splitWarning(bowlful, found.length));
    const divided = shares(found);
    return found.map((some, at) =>
      batchOf(`${name}.${at + 1}`, [{ bowlful, share: divided[at] ?? 0, tins: some }], some, making),
    );
  });
  return { batches, warnings };
}

/** Tins that this bowlful fills, a divided one as its part. */
const wholeTins = ({ tins }: Bowlful, find: TierFinder): BatchTin[] =>
  tins.map((filled) => ({
    ...find(filled),
    count: (filled.count * (filled.parts ?? 1)) / (filled.ofParts ?? 1),
    ...(filled.massG === undefined ? {} : { massG: filled.massG }),
  }));

const cleanCounts = (tins: readonly BatchTin[]): BatchTin[] =>
  tins.map((tin) => ({ ...tin, count: Math.round(tin.count) }));
