/**
 * How many pages are rendered together? Eleventy holds the text of all its pages until the last is written, so a
 * large site is rendered by several runs, one after the other; a usual one by a single run.
 */
import { PAGE_LISTS } from './page-memory.ts';
import type { SiteData } from './site-data.ts';

/** What one run may hold, in characters. */
const BATCH_CHARACTERS = 40_000_000;

/** About as long as pages are; those of charts and their workings grow with the tins. Measured on the demo. */
const PAGE_CHARACTERS = 50_000;
const CHART_CHARACTERS_A_TIN = 2500;
const WORKING_CHARACTERS_A_TIN = 30_000;

type List = (typeof PAGE_LISTS)[number];

function charactersOf(list: List, tinCount: number): number {
  if (list === 'workingPages') return PAGE_CHARACTERS + WORKING_CHARACTERS_A_TIN * tinCount;
  return PAGE_CHARACTERS + (list === 'chartPages' ? CHART_CHARACTERS_A_TIN * tinCount : 0);
}

/** The data of a site by runs, each with some of the pages; all of them together have every page once. */
export function* pageBatches(
  data: SiteData,
  tinCount: number,
  most: number = BATCH_CHARACTERS,
): Generator<SiteData> {
  const pages = new Map<List, unknown[]>();
  let characters = 0;
  const batch = (): SiteData => {
    const lists = PAGE_LISTS.map((list) => [list, pages.get(list) ?? []]);
    pages.clear();
    characters = 0;
    return { ...data, ...Object.fromEntries(lists) };
  };
  for (const list of PAGE_LISTS) {
    const own = charactersOf(list, tinCount);
    for (const view of data[list]) {
      if (characters > 0 && characters + own > most) yield batch();
      const some = pages.get(list);
      if (some === undefined) pages.set(list, [view]);
      else some.push(view);
      characters += own;
    }
  }
  if (characters > 0) yield batch();
}
