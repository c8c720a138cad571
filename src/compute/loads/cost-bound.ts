/**
 * What must so many loads cost at the very least? Every load that the tins can make is listed once (its mass
 * and cost), kept per gram as the cheapest, and put together by dynamic programming: F(1, R) is the cheapest
 * load of R grams, F(j, R) the cheapest of b grams + F(j − 1, R − b). Which tins are used twice is ignored and
 * parts of a gram go either way, so F is never above the truth: a bound that the search can cut by. It
 * matters where the even load falls between two whole numbers of eggs. F(j, R) is worked out only for what can be
 * left for j loads when no load is above the limit: a band that is narrow where bowls are nearly full.
 */
import type { LoadItems } from './items.ts';
import type { LoadCost } from './search.ts';

/** Least cost of `loads` loads that hold `mg` together; null when no such loads exist. */
export type LeastCost = (mg: number, loads: number) => LoadCost | null;

const MG_PER_SLOT = 4000;
const MOST_STEPS = 1_200_000;
const MOST_WORK = 20_000_000;

/** The bound for up to `loadCount` loads; null when listing it would take too long. */
export function costBound(
  items: LoadItems,
  loadCount: number,
  costOf: (mg: number) => LoadCost,
): LeastCost | null {
  const single = cheapestLoads(items, loadCount, costOf);
  if (single === null) return null;
  const slots = Math.floor(items.totalMg / MG_PER_SLOT) + 1;
  const used = single.flatMap((cost, slot) => (cost ? [{ slot, cost }] : []));
  if (used.length * slots * loadCount > MOST_WORK) return null;
  const scale = 1 + loadCount * used.reduce((most, { cost }) => Math.max(most, cost.unevenness), 0);
  const priced = used.map(({ slot, cost }) => ({ slot, price: cost.surplusMg * scale + cost.unevenness }));
  if (!priced.every(({ price }) => Number.isSafeInteger(price * loadCount))) return null;
  const tables = [pricesOfOne(priced, slots)];
  for (let loads = 2; loads <= loadCount; loads += 1) {
    const band = leftFor(loads, loadCount, items, slots);
    tables.push(pricesOfMore(tables[loads - 2] ?? new Float64Array(slots), priced, band));
  }
  return (mg, loads) => {
    const price = tables[loads - 1]?.[Math.floor(mg / MG_PER_SLOT)];
    return price === undefined || price === Infinity
      ? null
      : { surplusMg: Math.floor(price / scale), unevenness: price % scale };
  };
}

interface PricedSlot {
  slot: number;
  price: number;
}

function pricesOfOne(priced: PricedSlot[], slots: number): Float64Array {
  const table = new Float64Array(slots).fill(Infinity);
  for (const { slot, price } of priced) table[slot] = price;
  return table;
}

interface Band {
  from: number;
  to: number;
}

/** What can be left for so many of all the loads, in slots, with a slot to spare for each part of a gram. */
function leftFor(loads: number, loadCount: number, { totalMg, limitMg }: LoadItems, slots: number): Band {
  const filled = loadCount - loads;
  const least = Math.floor((totalMg - filled * limitMg) / MG_PER_SLOT) - filled - 1;
  const most = Math.floor((loads * limitMg) / MG_PER_SLOT) + loads + 1;
  return { from: Math.max(0, least), to: Math.min(slots - 1, most) };
}

/** One load more: its part of a gram and the others' may add up to a whole one. */
function pricesOfMore(fewer: Float64Array, priced: PricedSlot[], { from, to }: Band): Float64Array {
  const table = new Float64Array(fewer.length).fill(Infinity);
  const either = fewer.map((price, slot) => Math.min(price, fewer[slot - 1] ?? Infinity));
  for (const { slot, price } of priced) {
    for (let sum = Math.max(slot, from); sum <= to; sum++) {
      const whole = (either[sum - slot] ?? Infinity) + price;
      if (whole < (table[sum] ?? Infinity)) table[sum] = whole;
    }
  }
  return table;
}

/** The cheapest load for every whole gram that some set of tins makes; null when there are too many sets. */
function cheapestLoads(
  { groups, limitMg, totalMg }: LoadItems,
  loadCount: number,
  costOf: (mg: number) => LoadCost,
): (LoadCost | undefined)[] | null {
  const leastMg = totalMg - (loadCount - 1) * limitMg;
  const cheapest: (LoadCost | undefined)[] = [];
  const after = restsMg(groups);
  let steps = 0;
  const visit = (group: number, mg: number): void => {
    const here = groups[group];
    if (++steps > MOST_STEPS || mg + (after[group] ?? 0) < leastMg) return;
    if (!here) {
      keepCheaper(cheapest, mg, costOf);
      return;
    }
    const most = Math.min(here.pieces.length, Math.floor((limitMg - mg) / here.mg));
    for (let n = most; n >= 0; n--) visit(group + 1, mg + n * here.mg);
  };
  visit(0, 0);
  return steps > MOST_STEPS ? null : cheapest;
}

function keepCheaper(cheapest: (LoadCost | undefined)[], mg: number, costOf: (mg: number) => LoadCost): void {
  const slot = Math.floor(mg / MG_PER_SLOT);
  const known = cheapest[slot];
  const cost = costOf(mg);
  if (!known || cost.surplusMg < known.surplusMg) cheapest[slot] = cost;
  else if (cost.surplusMg === known.surplusMg && cost.unevenness < known.unevenness) cheapest[slot] = cost;
}

/** Mass of a group and all after it, mg; 0 past the last. */
function restsMg(groups: LoadItems['groups']): number[] {
  const rests = groups.map(() => 0);
  let sum = 0;
  for (let group = groups.length - 1; group >= 0; group--) {
    sum += (groups[group]?.mg ?? 0) * (groups[group]?.pieces.length ?? 0);
    rests[group] = sum;
  }
  return [...rests, 0];
}
