/**
 * 'I have this much batter: what can I fill?' Every choice of owned tins that fits, the one that uses the
 * batter best first (nearest to what there is; then fewer tins; then the shelf's order), at most twenty.
 * Exact: the shelf is halved, each half's choices are sorted by weight, and for each choice of one half only
 * the neighbourhood of what is missing is looked at in the other, outwards until nothing better can come.
 */
import { quantiseG } from '../../domain/quantise.ts';
import { type Choice, type HalfShelf, type HeldTin, halfShelf } from './half-shelf.ts';

/** A tin to fill: what one takes, g, and how many are owned. */
export interface Fillable {
  id: string;
  batterG: number;
  owned: number;
}

export interface FillLimits {
  /** Batter there is, g. */
  batterG: number;
  /** Most that a fill may ask for, g: a little over when falling short by that much is within tolerance. */
  mostG?: number;
  /** How many fills to give. Default 20. */
  best?: number;
  /** Choices of half the shelf that are looked at. Default 30,000. */
  cap?: number;
}

export interface Fill {
  tins: { id: string; count: number }[];
  usedG: number;
  /** Batter left, g; negative when it falls short within tolerance. */
  leftG: number;
}

export interface Fills {
  fills: Fill[];
  /** How many fills fit in all, among those looked at. */
  total: number;
  /** Whether more fit than are given. */
  more: boolean;
  /** False when the shelf was too large to look at every fill: those of many tins were left out. */
  complete: boolean;
}

interface Pair {
  costMg: number;
  tins: number;
  left: Choice;
  right: Choice;
}

function countsCompared(a: readonly number[], b: readonly number[]): number {
  for (let at = 0; at < Math.max(a.length, b.length); at += 1) {
    const difference = (b[at] ?? 0) - (a[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

const betterFirst = (a: Pair, b: Pair): number =>
  a.costMg - b.costMg ||
  a.tins - b.tins ||
  countsCompared(a.left.counts, b.left.counts) ||
  countsCompared(a.right.counts, b.right.counts);

/** The best pairs so far, best first. */
class Shortlist {
  readonly pairs: Pair[] = [];
  private readonly size: number;
  constructor(size: number) {
    this.size = size;
  }

  /** Whether a pair of this cost could still get in. */
  admits(costMg: number): boolean {
    const worst = this.pairs.length < this.size ? undefined : this.pairs[this.size - 1];
    return worst === undefined || costMg <= worst.costMg;
  }

  offer(pair: Pair): void {
    const at = this.pairs.findIndex((kept) => betterFirst(pair, kept) < 0);
    this.pairs.splice(at === -1 ? this.pairs.length : at, 0, pair);
    if (this.pairs.length > this.size) this.pairs.pop();
  }
}

/** First position whose weight is over `mg`. */
function firstOver(choices: readonly Choice[], mg: number): number {
  let low = 0;
  let high = choices.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((choices[middle]?.mg ?? 0) <= mg) low = middle + 1;
    else high = middle;
  }
  return low;
}

interface Search {
  haveMg: number;
  mostMg: number;
  list: Shortlist;
}

function offerPair({ haveMg, list }: Search, left: Choice, right: Choice): boolean {
  const usedMg = left.mg + right.mg;
  const costMg = Math.abs(haveMg - usedMg);
  if (!list.admits(costMg)) return false;
  if (usedMg > 0) list.offer({ costMg, tins: left.tins + right.tins, left, right });
  return true;
}

/** Looks outwards from what `left` leaves open, below and above, until the shortlist takes nothing more. */
function offerPartners(search: Search, left: Choice, rights: readonly Choice[]): void {
  const start = firstOver(rights, search.haveMg - left.mg);
  for (let at = start - 1; at >= 0; at -= 1) {
    const right = rights[at];
    if (right === undefined || !offerPair(search, left, right)) break;
  }
  for (let at = start; at < rights.length; at += 1) {
    const right = rights[at];
    if (right === undefined || left.mg + right.mg > search.mostMg || !offerPair(search, left, right)) break;
  }
}

function countFitting(lefts: HalfShelf, rights: HalfShelf, mostMg: number): number {
  const fitting = lefts.choices.reduce((sum, left) => sum + firstOver(rights.choices, mostMg - left.mg), 0);
  return Math.max(0, fitting - 1);
}

function fillOf(
  pair: Pair,
  halves: readonly (readonly HeldTin[])[],
  order: ReadonlyMap<string, number>,
  haveMg: number,
): Fill {
  const tins = [pair.left, pair.right]
    .flatMap(({ counts }, half) => counts.map((count, at) => ({ id: halves[half]?.[at]?.id ?? '', count })))
    .filter(({ count }) => count > 0)
    .sort((a, b) => (order.get(a.id) ?? 0) - (order.get(b.id) ?? 0));
  const usedMg = pair.left.mg + pair.right.mg;
  return { tins, usedG: quantiseG(usedMg / 1000), leftG: quantiseG((haveMg - usedMg) / 1000) };
}

/** A shelf whose choices have been listed once, for several amounts of batter. */
export interface OpenShelf {
  shelf: readonly Fillable[];
  halves: readonly [readonly HeldTin[], readonly HeldTin[]];
  lefts: HalfShelf;
  rights: HalfShelf;
}

/** Lists the choices of a shelf up to `mostG`, each half on its own; at most `cap` (30,000) of each. */
export function openShelf(shelf: readonly Fillable[], mostG: number, cap = 30_000): OpenShelf {
  const mostMg = Math.round(mostG * 1000);
  const held = shelf
    .map((tin) => ({ ...tin, mg: Math.round(tin.batterG * 1000) }))
    .filter((tin) => tin.mg > 0);
  const halves = [held.filter((_, at) => at % 2 === 0), held.filter((_, at) => at % 2 === 1)] as const;
  const [lefts, rights] = [halfShelf(halves[0], mostMg, cap), halfShelf(halves[1], mostMg, cap)];
  return { shelf, halves, lefts, rights };
}

/** Best fills from a shelf that was opened for at least as much. */
export function fillsFrom(open: OpenShelf, limits: Omit<FillLimits, 'cap'>): Fills {
  const { batterG, mostG = batterG, best = 20 } = limits;
  const { shelf, halves, lefts, rights } = open;
  const [haveMg, mostMg] = [Math.round(batterG * 1000), Math.round(mostG * 1000)];
  const list = new Shortlist(best);
  for (const left of lefts.choices) {
    if (left.mg > mostMg) break;
    offerPartners({ haveMg, mostMg, list }, left, rights.choices);
  }
  const total = countFitting(lefts, rights, mostMg);
  const order = new Map(shelf.map((tin, at) => [tin.id, at]));
  const fills = list.pairs.map((pair) => fillOf(pair, halves, order, haveMg));
  return { fills, total, more: total > fills.length, complete: lefts.complete && rights.complete };
}

/**
 * Best fills of `shelf` from an amount of batter; masses in g, to the milligram.
 * @example bestFills([{ id: 'round-6', batterG: 600, owned: 2 }], { batterG: 1250 }).fills[0]?.usedG // 1200
 */
export function bestFills(shelf: readonly Fillable[], limits: FillLimits): Fills {
  return fillsFrom(openShelf(shelf, limits.mostG ?? limits.batterG, limits.cap), limits);
}
