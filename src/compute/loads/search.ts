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
  /** For each load what is left from a group on, mg, as it was when the load was opened. */
  const rests = loads.map(() => new Float64Array(groups.length + 1));
  const seen = new Map<number, LoadCost>();
  let best = task.beat;
  let packing: GroupCounts[] | null = null;
  let steps = 0;
  /** By the cap, or because nothing can be better. */
  let over = false;

  /** Opens the next load; `loadsLeft` counts it. */
  function open(loadsLeft: number, leftMg: number, code: number, soFar: LoadCost): void {
    if (loadsLeft === 1) {
      if (leftMg <= limitMg) settle(add(soFar, costOf(leftMg)));
      return;
    }
    if (knownNoDearer(code * loadCount + loadsLeft, soFar)) return;
    const first = left.findIndex((count) => count > 0);
    if (first < 0) return;
    const { from, to } = windowFor(loadsLeft, leftMg, soFar);
    const load = loads[loadCount - loadsLeft] ?? [];
    const restMg = rests[loadCount - loadsLeft] ?? new Float64Array();
    load[first] = 1;
    left[first] = (left[first] ?? 0) - 1;
    sumFromEnd(restMg);
    const at = { load, restMg, loadsLeft, leftMg, soFar, from, to };
    fill(first, masses[first] ?? 0, code - (places[first] ?? 0), at);
    load[first] = 0;
    left[first] = (left[first] ?? 0) + 1;
  }

  /** Tries every number of pieces of this group on top of what is in the load, most first. */
  function fill(group: number, mg: number, code: number, at: Branch): void {
    if (++steps > stepCap) over = true;
    if (over || mg > at.to) return;
    if (group >= masses.length) {
      if (mg >= at.from) close(mg, code, at);
      return;
    }
    if (mg + (at.restMg[group] ?? 0) < at.from) return;
    const mass = masses[group] ?? 0;
    const place = places[group] ?? 0;
    const here = left[group] ?? 0;
    const inLoad = at.load[group] ?? 0;
    for (let n = Math.min(here, Math.floor((at.to - mg) / mass)); n >= 0; n--) {
      at.load[group] = inLoad + n;
      left[group] = here - n;
      fill(group + 1, mg + n * mass, code - n * place, at);
    }
    at.load[group] = inLoad;
    left[group] = here;
  }

  function close(mg: number, code: number, at: Branch): void {
    const soFar = add(at.soFar, costOf(mg));
    const leftMg = at.leftMg - mg;
    const rest = task.leastCost(leftMg, at.loadsLeft - 1);
    if (rest && isBetter(add(soFar, rest), best)) open(at.loadsLeft - 1, leftMg, code, soFar);
  }

  function settle(cost: LoadCost): void {
    if (!isBetter(cost, best)) return;
    best = cost;
    packing = [...loads.slice(0, loadCount - 1).map((load) => load.slice()), left.slice()];
    if (!isBetter(task.floor, best)) over = true;
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

  function sumFromEnd(restMg: Float64Array): void {
    let sum = 0;
    for (let group = masses.length - 1; group >= 0; group--) {
      sum += (left[group] ?? 0) * (masses[group] ?? 0);
      restMg[group] = sum;
    }
  }

  const whole = left.reduce((sum, count, group) => sum + count * (places[group] ?? 0), 0);
  open(loadCount, items.totalMg, whole, { surplusMg: 0, unevenness: 0 });
  return { packing, cost: best, steps, complete: steps <= stepCap };
}

/** The load that is being filled: the same for all its fillings. */
interface Branch {
  load: number[];
  restMg: Float64Array;
  loadsLeft: number;
  leftMg: number;
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
