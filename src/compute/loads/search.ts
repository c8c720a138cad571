/**
 * Depth-first search for the best arrangement in a given number of loads. Load by load: the heaviest tin left
 * must go somewhere, so it opens the next load, and every set of others that fits with it is tried. That order
 * never meets the same arrangement twice. Branches are cut when what is left cannot fit the loads left, when
 * the surplus or unevenness so far cannot beat the best known, or when the same tins were left before at no
 * more cost. The cap counts steps, not seconds: the same input gives the same answer on any machine.
 */
import type { GroupCounts, LoadItems } from './items.ts';

/** Compared in this order; whole numbers. */
export interface LoadCost {
  surplusMg: number;
  /** Σ of squared distances from the mean load, each in whole steps. */
  unevenness: number;
}

export interface SearchTask {
  items: LoadItems;
  loadCount: number;
  costOf: (loadMg: number) => LoadCost;
  /** Never more than what `loads` loads that hold `mg` together cost; null when no such loads exist. */
  leastCost: (mg: number, loads: number) => LoadCost | null;
  /** Heaviest and lightest load whose own unevenness is within the budget, mg. */
  evenWindowMg: (budget: number) => { from: number; to: number };
  /** Nothing costs less: once found, the search is over. */
  floor: LoadCost;
  /** Only something better than this is looked for. */
  beat: LoadCost;
  stepCap: number;
}

export interface SearchResult {
  packing: GroupCounts[] | null;
  cost: LoadCost;
  steps: number;
  /** True when nothing better than `cost` exists. */
  complete: boolean;
}

const REMEMBERED = 100_000;

export const isBetter = (a: LoadCost, b: LoadCost): boolean =>
  a.surplusMg < b.surplusMg || (a.surplusMg === b.surplusMg && a.unevenness < b.unevenness);

/** The best arrangement in exactly `loadCount` loads that beats `beat`, if there is one. */
export function searchLoads(task: SearchTask): SearchResult {
  const { items, loadCount, costOf, stepCap } = task;
  const { groups, limitMg } = items;
  const masses = groups.map((group) => group.mg);
  const left = groups.map((group) => group.pieces.length);
  const places = placeValues(left);
  const loads = Array.from({ length: loadCount }, () => groups.map(() => 0));
  const seen = new Map<number, LoadCost>();
  let best = task.beat;
  let packing: GroupCounts[] | null = null;
  let steps = 0;
  let stopped = false;

  /** Opens the next load; `loadsLeft` counts it. */
  function open(loadsLeft: number, leftMg: number, code: number, soFar: LoadCost): void {
    if (loadsLeft === 1) {
      const last = left.slice();
      if (leftMg <= limitMg) settle(last, add(soFar, costOf(leftMg)));
      return;
    }
    if (knownNoDearer(code * loadCount + loadsLeft, soFar)) return;
    const window = windowFor(loadsLeft, leftMg, soFar);
    const first = left.findIndex((count) => count > 0);
    if (first < 0) return;
    const load = loads[loadCount - loadsLeft] ?? [];
    take(load, first, 1);
    fill(load, first, masses[first] ?? 0, {
      loadsLeft,
      leftMg,
      code: code - (places[first] ?? 0),
      soFar,
      ...window,
    });
    take(load, first, -1);
  }

  /** Tries every number of pieces of this group on top of what is in the load, most first. */
  function fill(load: number[], group: number, mg: number, at: Branch): void {
    if (++steps > stepCap) stopped = true;
    if (stopped || isPerfect()) return;
    if (mg > at.to) return;
    if (group >= masses.length) {
      if (mg >= at.from) close(mg, at);
      return;
    }
    if (mg + restMg(group) < at.from) return;
    const mass = masses[group] ?? 0;
    const most = Math.min(left[group] ?? 0, Math.floor((at.to - mg) / mass));
    const place = places[group] ?? 0;
    for (let n = most; n >= 0; n--) {
      take(load, group, n);
      fill(load, group + 1, mg + n * mass, { ...at, code: at.code - n * place });
      take(load, group, -n);
    }
  }

  function close(mg: number, at: Branch): void {
    const soFar = add(at.soFar, costOf(mg));
    const leftMg = at.leftMg - mg;
    const rest = task.leastCost(leftMg, at.loadsLeft - 1);
    if (rest && isBetter(add(soFar, rest), best)) open(at.loadsLeft - 1, leftMg, at.code, soFar);
  }

  function settle(last: number[], cost: LoadCost): void {
    if (!isBetter(cost, best)) return;
    best = cost;
    packing = [...loads.slice(0, loadCount - 1).map((load) => load.slice()), last];
  }

  function windowFor(loadsLeft: number, leftMg: number, soFar: LoadCost): { from: number; to: number } {
    const from = leftMg - (loadsLeft - 1) * limitMg;
    if (soFar.surplusMg < best.surplusMg) return { from, to: limitMg };
    const even = task.evenWindowMg(best.unevenness - soFar.unevenness - 1);
    return { from: Math.max(from, even.from), to: Math.min(limitMg, even.to) };
  }

  function knownNoDearer(key: number, soFar: LoadCost): boolean {
    const before = seen.get(key);
    if (before && !isBetter(soFar, before)) return true;
    if (Number.isSafeInteger(key) && (before || seen.size < REMEMBERED)) seen.set(key, soFar);
    return false;
  }

  function take(load: number[], group: number, n: number): void {
    load[group] = (load[group] ?? 0) + n;
    left[group] = (left[group] ?? 0) - n;
  }

  function restMg(from: number): number {
    let sum = 0;
    for (let group = from; group < masses.length; group++) sum += (left[group] ?? 0) * (masses[group] ?? 0);
    return sum;
  }

  const isPerfect = (): boolean => packing !== null && !isBetter(task.floor, best);

  const whole = left.reduce((sum, count, group) => sum + count * (places[group] ?? 0), 0);
  open(loadCount, items.totalMg, whole, { surplusMg: 0, unevenness: 0 });
  return { packing, cost: best, steps, complete: !stopped };
}

/** Where the search stands inside one load. */
interface Branch {
  loadsLeft: number;
  leftMg: number;
  /** What is left, as one number. */
  code: number;
  soFar: LoadCost;
  from: number;
  to: number;
}

function add(a: LoadCost, b: LoadCost): LoadCost {
  return { surplusMg: a.surplusMg + b.surplusMg, unevenness: a.unevenness + b.unevenness };
}

/** Place values that write a list of counts as one number. */
function placeValues(counts: number[]): number[] {
  let place = 1;
  return counts.map((count) => {
    const own = place;
    place *= count + 1;
    return own;
  });
}
