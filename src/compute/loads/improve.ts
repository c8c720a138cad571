/**
 * With the number of loads settled: least surplus from whole eggs, then most even. Evenness is the sum over
 * loads of the squared distance from the mean load in whole steps of `evenStepG`: a distance of less than half
 * a step counts as none.
 */
import { evenFit } from './first-fit.ts';
import { type GroupCounts, type LoadItems, loadMg } from './items.ts';
import { isBetter, type LoadCost, searchLoads } from './search.ts';

export interface Improvement {
  packing: GroupCounts[];
  cost: LoadCost;
  proven: boolean;
  steps: number;
}

export interface Wishes {
  surplusG: (loadBatterG: number) => number;
  evenStepG: number;
  stepCap: number;
}

/** The best arrangement in as many loads as `start` has. */
export function improveLoads(items: LoadItems, start: GroupCounts[], wishes: Wishes): Improvement {
  const loadCount = start.length;
  const ruler = evenRuler(items.totalMg / Math.max(1, loadCount), wishes.evenStepG * 1000);
  const costOf = (mg: number): LoadCost => ({
    surplusMg: Math.max(0, Math.round(wishes.surplusG(mg / 1000) * 1000)),
    unevenness: ruler.unevenness(mg),
  });
  const even = evenFit(items, loadCount);
  const candidates = even ? [start, even] : [start];
  const costs = candidates.map((packing) => packingCost(items, packing, costOf));
  let best = { packing: start, cost: costs[0] ?? { surplusMg: 0, unevenness: 0 } };
  if (even && costs[1] && isBetter(costs[1], best.cost)) best = { packing: even, cost: costs[1] };
  if (loadCount < 2 || isPerfect(best.cost)) return { ...best, proven: true, steps: 0 };
  const { stepCap } = wishes;
  const { leastUnevenness, evenWindowMg } = ruler;
  const found = searchLoads({
    items,
    loadCount,
    costOf,
    leastUnevenness,
    evenWindowMg,
    beat: best.cost,
    stepCap,
  });
  const { cost, steps, complete: proven } = found;
  return found.packing ? { packing: found.packing, cost, proven, steps } : { ...best, proven, steps };
}

const squared = (x: number): number => x * x;

const isPerfect = (cost: LoadCost): boolean => cost.surplusMg === 0 && cost.unevenness === 0;

function packingCost(items: LoadItems, packing: GroupCounts[], costOf: (mg: number) => LoadCost): LoadCost {
  const costs = packing.map((counts) => costOf(loadMg(items, counts)));
  return {
    surplusMg: costs.reduce((sum, cost) => sum + cost.surplusMg, 0),
    unevenness: costs.reduce((sum, cost) => sum + cost.unevenness, 0),
  };
}

function evenRuler(meanMg: number, stepMg: number) {
  return {
    unevenness: (mg: number): number => squared(Math.round(Math.abs(mg - meanMg) / stepMg)),
    /** Convex, so loads that share `mg` equally have the least; rounding gives back at most half a step each. */
    leastUnevenness: (mg: number, loads: number): number =>
      loads * squared(Math.max(0, Math.abs(mg / loads - meanMg) / stepMg - 0.5)),
    evenWindowMg: (budget: number) => {
      const reachMg = budget < 0 ? -1 : (Math.floor(Math.sqrt(budget)) + 0.5) * stepMg;
      return { from: Math.ceil(meanMg - reachMg), to: Math.floor(meanMg + reachMg) };
    },
  };
}
