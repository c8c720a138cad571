/**
 * Pages whose view is put together when it is read: of all pages of a large kitchen the engine then holds one. A
 * page is read a few times in turn, so that the last one is kept; what it says is written down while it is there.
 */
import { writeDown } from './written-view.ts';

let last: { page: object; rest: object } | null = null;

/** A plain object with `now` in it and the keys of `later`, in their order; these are made by `make` when one is read. */
export function lazyPage<Now extends object, Later extends object>(
  now: Now,
  later: readonly (keyof Later & string)[],
  make: () => Later,
): Now & Later {
  const page = { ...now };
  const rest = (): Later => {
    if (last?.page === page) return last.rest as Later;
    last = null;
    const made = make();
    last = { page, rest: made };
    writeDown(page);
    return made;
  };
  for (const key of later)
    Object.defineProperty(page, key, { enumerable: true, configurable: true, get: () => rest()[key] });
  return page as Now & Later;
}
