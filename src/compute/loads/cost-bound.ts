/**
 * What must so many loads cost at the very least? Every load that the tins can make is listed once (its mass
 * and cost), kept per gram as the cheapest, and put together by dynamic programming: F(1, R) is the cheapest
 * load of R grams, F(j, R) the cheapest of b grams + F(j − 1, R − b). Which tins are used twice is ignored and
 * parts of a gram go either way, so F is never above the truth: a bound that the search can cut by. It
 * matters where the even load falls between two whole numbers of eggs. Loads that cannot be part of anything
 * cheaper than what is known are left out, and F(j, R) is worked out only for what the others can leave for j loads.
 */
import type { LoadItems } from './items.ts';
import type { LoadCost } from './search.ts';

/** Least cost of `loads` loads that hold `mg` together; null when no such loads exist. */
export type LeastCost = (mg: number, loads: number) => LoadCost | null;

const MG_PER_SLOT = 4000;
const MOST_STEPS = 1_200_000;
const MOST_WORK = 20_000_000;

/**
 * The bound for up to `loadCount` loads that together cost less than `known`: a load whose own cost with the
 * cheapest others comes to that is left out, so null is also for what cannot be better. Null when listing would
 * take too long.
 */
export function costBound(
  items: LoadItems,
  loadCount: number,
  costOf: (mg: number) => LoadCost,
  known: LoadCost,
): LeastCost | null {
  const single = cheapestLoads(items, loadCount, costOf);
  if (single === null) return null;
  const used = single.flatMap((cost, slot) => (cost ? [{ slot, cost }] : []));
  const slots = Math.floor(items.totalMg / MG_PER_SLOT) + 1;
  if (used.length * slots * loadCount > MOST_WORK) return null;
  const mostUneven = loadCount * used.reduce((most, { cost }) => Math.max(most, cost.unevenness), 0);
  const scale = 1 + Math.max(known.unevenness, mostUneven);
  const priceOf = (cost: LoadCost): number => cost.surplusMg * scale + cost.unevenness;
  const all = used.map(({ slot, cost }) => ({ slot, price: priceOf(cost) }));
  if (!all.every(({ price }) => Number.isSafeInteger(price * loadCount))) return null;
  const one = pricesOfOne(worthwhile(all, loadCount, priceOf(known)), slots);
  const tables = [one];
  for (let loads = 2; loads <= loadCount; loads += 1)
    tables.push(pricesOfMore(tables[loads - 2] ?? one, one, loadCount - loads));
  return (mg, loads) => {
    const price = tables[loads - 1]?.prices[Math.floor(mg / MG_PER_SLOT)];
    return price === undefined || price === Infinity
      ? null
      : { surplusMg: Math.floor(price / scale), unevenness: price % scale };
  };
}

interface PricedSlot {
  slot: number;
  price: number;
}

/** Slots that, beside the cheapest others, cost less than what is known. */
function worthwhile(priced: PricedSlot[], loadCount: number, known: number): PricedSlot[] {
  const cheapest = priced.reduce((least, { price }) => Math.min(least, price), Infinity);
  return priced.filter(({ price }) => price + (loadCount - 1) * cheapest < known);
}

/** Prices of so many loads by the slots they hold together; none outside `from` to `to`. */
interface Table {
  prices: Float64Array;
  from: number;
  to: number;
}

function pricesOfOne(priced: PricedSlot[], slots: number): Table {
  const prices = new Float64Array(slots).fill(Infinity);
  for (const { slot, price } of priced) prices[slot] = price;
  return { prices, from: priced[0]?.slot ?? 0, to: priced.at(-1)?.slot ?? -1 };
}

/**
 * One load more: its part of a gram and the others' may add up to a whole one. What the `after` loads still to
 * come could not bring to the whole is left out.
 */
function pricesOfMore(fewer: Table, one: Table, after: number): Table {
  const slots = one.prices.length;
  const prices = new Float64Array(slots).fill(Infinity);
  const from = Math.max(fewer.from + one.from, slots - 1 - after * (one.to + 1));
  const to = Math.min(fewer.to + one.to + 1, slots - 1);
  for (let rest = fewer.from; rest <= fewer.to + 1; rest++) {
    const before = Math.min(fewer.prices[rest] ?? Infinity, fewer.prices[rest - 1] ?? Infinity);
    if (before === Infinity) continue;
    const last = Math.min(one.to, to - rest);
    for (let slot = Math.max(one.from, from - rest); slot <= last; slot++) {
      const price = before + (one.prices[slot] ?? Infinity);
      if (price < (prices[rest + slot] ?? Infinity)) prices[rest + slot] = price;
    }
  }
  return { prices, from, to };
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
