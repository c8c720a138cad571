/**
 * Which batches share an oven load? The fewest loads, then the least time with the oven on. Up to ten batches of
 * one temperature that could meet at all, every way of sharing them out is weighed (dynamic programming over
 * subsets); more are shared out ten by ten, or one by one into the first load with room. The bound is the same
 * sum with 'room not found' taken for room; of more than ten, for the ten biggest.
 */
import { airedAreaMm2 } from './footprint.ts';
import { goTogether, mightGoTogether, type OvenBatch, type OvenRules } from './load-rules.ts';

export interface Grouping {
  /** Batches of each load. */
  groups: OvenBatch[][];
  /** No way of baking these has fewer loads. */
  leastLoads: number;
  /** Fewest loads and, among those, least time are proven. */
  proven: boolean;
}

const MOST_EXACT = 10;
/** More than all minutes of a week's loads. */
const PER_LOAD = 1_000_000;

type Together = (batches: readonly OvenBatch[]) => boolean;

const minutesOf = (batches: readonly OvenBatch[]): number =>
  batches.reduce((most, { byMin }) => Math.max(most, byMin), 0);

interface Cheapest {
  cost: number;
  groups: OvenBatch[][];
}

/** Every set of batches once, by its bits; the set's cheapest sharing from those of its parts. */
function cheapest(batches: readonly OvenBatch[], together: Together): Cheapest {
  const sets = 2 ** batches.length;
  const good = new Uint8Array(sets);
  const cost = new Float64Array(sets).fill(Number.POSITIVE_INFINITY);
  const chosen = new Uint32Array(sets);
  const membersOf = (set: number): OvenBatch[] => batches.filter((_, at) => (set >> at) & 1);
  const isGood = (set: number): boolean => {
    for (let rest = set; rest > 0; rest &= rest - 1) {
      const without = set & ~(rest & -rest);
      if (without > 0 && good[without] === 0) return false;
    }
    return together(membersOf(set));
  };
  const minutes = new Float64Array(sets);
  for (let set = 1; set < sets; set += 1) {
    good[set] = isGood(set) ? 1 : 0;
    minutes[set] = minutesOf(membersOf(set));
  }
  cost[0] = 0;
  for (let set = 1; set < sets; set += 1) {
    const lowest = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if ((part & lowest) === 0 || good[part] === 0) continue;
      const total = PER_LOAD + (minutes[part] ?? 0) + (cost[set & ~part] ?? 0);
      if (total < (cost[set] ?? 0)) {
        cost[set] = total;
        chosen[set] = part;
      }
    }
  }
  const groups: OvenBatch[][] = [];
  for (let set = sets - 1; set > 0 && (chosen[set] ?? 0) > 0; set &= ~(chosen[set] ?? set))
    groups.push(membersOf(chosen[set] ?? 0));
  return { cost: cost[sets - 1] ?? 0, groups };
}

function firstFit(batches: readonly OvenBatch[], rules: OvenRules): OvenBatch[][] {
  const groups: OvenBatch[][] = [];
  for (const batch of [...batches].sort((a, b) => a.neededBy - b.neededBy || b.byMin - a.byMin)) {
    const roomy = groups.find((group) => goTogether([...group, batch], rules));
    if (roomy) roomy.push(batch);
    else groups.push([batch]);
  }
  return groups;
}

const takenMm2 = ({ tins }: OvenBatch): number =>
  tins.reduce((sum, { footprint, count }) => sum + count * airedAreaMm2(footprint, 0), 0);

/** What the ten that take most room need, and what the tins owned allow. */
function leastOfMany(batches: readonly OvenBatch[], rules: OvenRules): number {
  const biggest = [...batches].sort((a, b) => takenMm2(b) - takenMm2(a)).slice(0, MOST_EXACT);
  const bound = cheapest(biggest, (some) => mightGoTogether(some, rules));
  const counts = new Map<string, { count: number; owned: number }>();
  for (const { tinId, count, owned } of batches.flatMap(({ tins }) => tins))
    counts.set(tinId, { count: count + (counts.get(tinId)?.count ?? 0), owned });
  const byTins = [...counts.values()].map(({ count, owned }) => Math.ceil(count / owned));
  return Math.max(Math.floor(bound.cost / PER_LOAD), ...byTins);
}

/** Ten at a time, by when they are needed, each ten shared out exactly; or first fit, where that is better. */
function groupMany(batches: readonly OvenBatch[], rules: OvenRules): OvenBatch[][] {
  const inTime = [...batches].sort((a, b) => a.neededBy - b.neededBy || b.byMin - a.byMin);
  const tens = Array.from({ length: Math.ceil(inTime.length / MOST_EXACT) }, (_, at) =>
    inTime.slice(at * MOST_EXACT, (at + 1) * MOST_EXACT),
  );
  const byTens = tens.flatMap((some) => cheapest(some, (group) => goTogether(group, rules)).groups);
  const oneByOne = firstFit(batches, rules);
  return costOf(oneByOne) < costOf(byTens) ? oneByOne : byTens;
}

const costOf = (groups: readonly OvenBatch[][]): number =>
  groups.reduce((sum, group) => sum + PER_LOAD + minutesOf(group), 0);

function groupSome(batches: readonly OvenBatch[], rules: OvenRules): Grouping {
  if (batches.length > MOST_EXACT) {
    const groups = groupMany(batches, rules);
    return { groups, leastLoads: leastOfMany(batches, rules), proven: false };
  }
  const found = cheapest(batches, (some) => goTogether(some, rules));
  const bound = cheapest(batches, (some) => mightGoTogether(some, rules));
  return {
    groups: found.groups,
    leastLoads: Math.floor(bound.cost / PER_LOAD),
    proven: found.cost === bound.cost,
  };
}

/** Batches that could meet, directly or by way of others; what lies in two such sets never shares a load. */
function neighbourhoods(batches: readonly OvenBatch[], rules: OvenRules): OvenBatch[][] {
  const left = [...batches];
  const found: OvenBatch[][] = [];
  for (let first = left.shift(); first !== undefined; first = left.shift()) {
    const near = [first];
    for (const one of near) {
      for (let at = left.length - 1; at >= 0; at -= 1) {
        const other = left[at];
        if (other && mightGoTogether([one, other], rules)) near.push(...left.splice(at, 1));
      }
    }
    found.push(batches.filter((batch) => near.includes(batch)));
  }
  return found;
}

/** All batches, temperature by temperature from the coolest; each batch must fit the oven by itself. */
export function groupBatches(batches: readonly OvenBatch[], rules: OvenRules): Grouping {
  const heats = [...new Set(batches.map(({ ovenC }) => ovenC))].sort((a, b) => a - b);
  const parts = heats
    .flatMap((heat) =>
      neighbourhoods(
        batches.filter(({ ovenC }) => ovenC === heat),
        rules,
      ),
    )
    .map((some) => groupSome(some, rules));
  return {
    groups: parts.flatMap(({ groups }) => groups),
    leastLoads: parts.reduce((sum, { leastLoads }) => sum + leastLoads, 0),
    proven: parts.every(({ proven }) => proven),
  };
}
