/** How many loads does it take? Lower bound, then first fit, then a search for each number between them. */
import { firstFit } from './first-fit.ts';
import type { GroupCounts, LoadItems } from './items.ts';
import { leastLoads } from './lower-bound.ts';
import { searchLoads } from './search.ts';

export interface Fewest {
  packing: GroupCounts[];
  leastLoads: number;
  proven: boolean;
  steps: number;
}

/** The fewest loads found, with the proven least number. */
export function findFewest(items: LoadItems, stepCap: number): Fewest {
  const quick = firstFit(items);
  let least = leastLoads(items);
  let steps = 0;
  for (let loadCount = least; loadCount < quick.length; loadCount++) {
    const found = searchLoads(anyPacking(items, loadCount, stepCap - steps));
    steps += found.steps;
    if (found.packing)
      return { packing: found.packing, leastLoads: least, proven: least === loadCount, steps };
    if (found.complete && least === loadCount) least = loadCount + 1;
  }
  return { packing: quick, leastLoads: least, proven: least === quick.length, steps };
}

const FREE = { surplusMg: 0, unevenness: 0 };

function anyPacking(items: LoadItems, loadCount: number, stepCap: number) {
  return {
    items,
    loadCount,
    costOf: () => FREE,
    leastCost: () => FREE,
    floor: FREE,
    evenWindowMg: () => ({ from: 0, to: items.limitMg }),
    beat: { surplusMg: 0, unevenness: 1 },
    stepCap,
  };
}
