/**
 * Which packs cover what is needed for the least money? At equal cost the mix that leaves least over, then the
 * one of fewest packs. Exact, by branch and bound over whole numbers (mg, or eggs): packs are tried from the
 * cheapest by weight; a branch is left when even the cheapest weight for what is missing would cost more than the
 * best mix so far. A pack whose like in a cheaper size comes to the same amount is never taken that often.
 */
import type { Minor } from '../../domain/money.ts';

export interface WholePack {
  /** mg, or eggs: whole, above 0. */
  size: number;
  priceMinor: Minor;
}

export interface PackMix {
  /** How many of each pack, in the order given. */
  counts: number[];
  priceMinor: Minor;
  /** Bought beyond what is needed. */
  left: number;
  packs: number;
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** Cheaper by weight first; of equals the larger. */
const byUnitPrice = (a: WholePack, b: WholePack): number =>
  a.priceMinor * b.size - b.priceMinor * a.size || b.size - a.size;

const better = (a: Omit<PackMix, 'counts'>, b: Omit<PackMix, 'counts'>): boolean =>
  a.priceMinor !== b.priceMinor
    ? a.priceMinor < b.priceMinor
    : a.left !== b.left
      ? a.left < b.left
      : a.packs < b.packs;

interface Search {
  packs: WholePack[];
  /** Most that is ever worth taking of each. */
  most: number[];
  counts: number[];
  best: PackMix | null;
}

function keepIfBetter(search: Search, priceMinor: Minor, missing: number): void {
  const packs = search.counts.reduce((sum, count) => sum + count, 0);
  const found = { priceMinor, left: 0 - missing, packs };
  if (search.best === null || better(found, search.best))
    search.best = { ...found, counts: [...search.counts] };
}

/** Even the cheapest weight from here on costs more than the best mix. */
function isHopeless({ packs, best }: Search, at: number, priceMinor: Minor, missing: number): boolean {
  const pack = packs[at];
  if (best === null || pack === undefined) return false;
  return (best.priceMinor - priceMinor) * pack.size < missing * pack.priceMinor;
}

function take(search: Search, at: number, priceMinor: Minor, missing: number): void {
  if (missing <= 0) {
    keepIfBetter(search, priceMinor, missing);
    return;
  }
  const pack = search.packs[at];
  if (pack === undefined || isHopeless(search, at, priceMinor, missing)) return;
  const needed = Math.ceil(missing / pack.size);
  for (let count = Math.min(needed, search.most[at] ?? needed); count >= 0; count -= 1) {
    search.counts[at] = count;
    take(search, at + 1, priceMinor + count * pack.priceMinor, missing - count * pack.size);
  }
  search.counts[at] = 0;
}

/**
 * The cheapest packs for a need of whole mg (or eggs); null when there are none to choose from.
 * @example cheapestPacks(1_300_000, [{ size: 500_000, priceMinor: 105 }, { size: 1_000_000, priceMinor: 169 }])
 *   // { counts: [1, 1], priceMinor: 274, left: 200_000, packs: 2 }
 */
export function cheapestPacks(needed: number, packs: readonly WholePack[]): PackMix | null {
  if (packs.length === 0) return null;
  if (needed <= 0) return { counts: packs.map(() => 0), priceMinor: 0, left: 0, packs: 0 };
  const sorted = [...packs].sort(byUnitPrice);
  const most = sorted.map((pack, at) =>
    Math.min(
      Number.POSITIVE_INFINITY,
      ...sorted.slice(0, at).map(({ size }) => size / gcd(size, pack.size) - (size >= pack.size ? 1 : 0)),
    ),
  );
  const search: Search = { packs: sorted, most, counts: sorted.map(() => 0), best: null };
  take(search, 0, 0, needed);
  const { best } = search;
  if (best === null) return null;
  const counts = packs.map((pack) => best.counts[sorted.indexOf(pack)] ?? 0);
  return { ...best, counts };
}
