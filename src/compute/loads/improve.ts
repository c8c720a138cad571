/**
 * With the number of loads settled: least surplus from whole eggs, then most even. A brief search settles most
 * mixes; for the others a bound on the cost is listed, and the search repeated from just above that bound
 * outwards: a narrow search is soon over, and what it finds is the best.
 */
import { costBound } from './cost-bound.ts';
import { evenRuler } from './even-ruler.ts';
import { evenFit } from './first-fit.ts';
import { type GroupCounts, type LoadItems, loadMg } from './items.ts';
import { isBetter, type LoadCost, type SearchTask, searchLoads } from './search.ts';

export interface Improvement {
  packing: GroupCounts[];
  cost: LoadCost;
  /** No arrangement in so many loads has less surplus than this, mg. */
  leastSurplusMg: number;
  proven: boolean;
  steps: number;
}

export interface Wishes {
  surplusG: (loadBatterG: number) => number;
  evenStepG: number;
  stepCap: number;
  /** Steps before the bound is listed, which takes some milliseconds. */
  briefSteps?: number;
}

interface Packed {
  packing: GroupCounts[];
  cost: LoadCost;
}

const BRIEF_STEPS = 10_000;
const NOTHING: LoadCost = { surplusMg: 0, unevenness: 0 };

/** The best arrangement in as many loads as `start` has. */
export function improveLoads(items: LoadItems, start: GroupCounts[], wishes: Wishes): Improvement {
  const loadCount = start.length;
  const ruler = evenRuler(items.totalMg / Math.max(1, loadCount), wishes.evenStepG * 1000);
  const costOf = (mg: number): LoadCost => ({
    surplusMg: Math.max(0, Math.round(wishes.surplusG(mg / 1000) * 1000)),
    unevenness: ruler.unevenness(mg),
  });
  const quick = cheaper(items, costOf, start, evenFit(items, loadCount));
  if (loadCount < 2 || !isBetter(NOTHING, quick.cost)) return settled(quick, 0);
  const { evenWindowMg, leastCost } = ruler;
  const stepCap = Math.min(wishes.briefSteps ?? BRIEF_STEPS, wishes.stepCap);
  const task = {
    items,
    loadCount,
    costOf,
    leastCost,
    floor: NOTHING,
    evenWindowMg,
    beat: quick.cost,
    stepCap,
  };
  const brief = searchLoads(task);
  const best = brief.packing ? { packing: brief.packing, cost: brief.cost } : quick;
  if (brief.complete) return settled(best, brief.steps);
  const bound = costBound(items, loadCount, costOf, best.cost) ?? leastCost;
  const floor = bound(items.totalMg, loadCount);
  if (floor === null || !isBetter(floor, best.cost)) return settled(best, brief.steps);
  const wide = { ...task, leastCost: bound, floor, stepCap: wishes.stepCap };
  return fromTheFloorUp(wide, best, brief.steps, mostUneven(items, loadCount, ruler.unevenness));
}

const settled = (best: Packed, steps: number): Improvement => ({
  ...best,
  leastSurplusMg: best.cost.surplusMg,
  proven: true,
  steps,
});

/** Searches just above the floor, then four times as far above it, up to what is known already. */
function fromTheFloorUp(
  task: SearchTask,
  known: Packed,
  stepsSoFar: number,
  mostUneven: number,
): Improvement {
  const { floor, stepCap } = task;
  let steps = stepsSoFar;
  for (let above = 1; ; above *= 4) {
    const wanted = { ...floor, unevenness: Math.floor(floor.unevenness) + above };
    const last = above > mostUneven || !isBetter(wanted, known.cost);
    const found = searchLoads({ ...task, beat: last ? known.cost : wanted, stepCap: stepCap - steps });
    steps += found.steps;
    const best = found.packing ? { packing: found.packing, cost: found.cost } : known;
    if (found.complete && (found.packing || last)) return settled(best, steps);
    if (!found.complete) return { ...best, leastSurplusMg: floor.surplusMg, proven: false, steps };
  }
}

function mostUneven({ limitMg }: LoadItems, loadCount: number, unevenness: (mg: number) => number): number {
  return loadCount * Math.max(unevenness(0), unevenness(limitMg));
}

/** The cheaper of two arrangements, the second of which may not exist. */
function cheaper(
  items: LoadItems,
  costOf: (mg: number) => LoadCost,
  first: GroupCounts[],
  second: GroupCounts[] | null,
): Packed {
  const a = { packing: first, cost: packingCost(items, first, costOf) };
  if (second === null) return a;
  const b = { packing: second, cost: packingCost(items, second, costOf) };
  return isBetter(b.cost, a.cost) ? b : a;
}

function packingCost(items: LoadItems, packing: GroupCounts[], costOf: (mg: number) => LoadCost): LoadCost {
  const costs = packing.map((counts) => costOf(loadMg(items, counts)));
  return {
    surplusMg: costs.reduce((sum, cost) => sum + cost.surplusMg, 0),
    unevenness: costs.reduce((sum, cost) => sum + cost.unevenness, 0),
  };
}
