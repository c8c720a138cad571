/**
 * Two quick arrangements for the search to start from: first-fit decreasing (heaviest tin first, into the
 * first load with room), which is seldom a load too many, and even fit (into the lightest load).
 */
import type { GroupCounts, LoadItems } from './items.ts';

interface Filling {
  counts: number[];
  mg: number;
}

/** First-fit decreasing: as many loads as it takes. */
export function firstFit(items: LoadItems): GroupCounts[] {
  const loads: Filling[] = [];
  items.groups.forEach(({ mg, pieces }, group) => {
    for (let n = 0; n < pieces.length; n++) {
      const roomy = loads.find((load) => load.mg + mg <= items.limitMg);
      const load = roomy ?? emptyLoad(items);
      if (!roomy) loads.push(load);
      put(load, group, mg);
    }
  });
  return loads.map((load) => load.counts);
}

/** Into the lightest of `loadCount` loads; null when the lightest cannot take the next tin. */
export function evenFit(items: LoadItems, loadCount: number): GroupCounts[] | null {
  const loads = Array.from({ length: loadCount }, () => emptyLoad(items));
  for (const [group, { mg, pieces }] of items.groups.entries()) {
    for (let n = 0; n < pieces.length; n++) {
      const lightest = loads.reduce((a, b) => (b.mg < a.mg ? b : a));
      if (lightest.mg + mg > items.limitMg) return null;
      put(lightest, group, mg);
    }
  }
  return loads.map((load) => load.counts);
}

function emptyLoad(items: LoadItems): Filling {
  return { counts: items.groups.map(() => 0), mg: 0 };
}

function put(load: Filling, group: number, mg: number): void {
  load.counts[group] = (load.counts[group] ?? 0) + 1;
  load.mg += mg;
}
