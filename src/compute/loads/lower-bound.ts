/**
 * How many loads are needed at the very least? The largest of two bounds of bin packing:
 * L2 (Martello & Toth, Knapsack Problems, 1990, ch. 8; from memory): pieces over half the bowl need a load
 * each, and what the smaller ones overflow them by needs more; and the dual feasible functions u(k) of Fekete
 * & Schepers (Math. Program. 91, 2001; from memory), which round masses to k-ths of the bowl.
 */
import type { LoadItems } from './items.ts';

const DUAL_STEPS = 12;

/** The least number of loads that any arrangement has. */
export function leastLoads(items: LoadItems): number {
  let least = Math.ceil(items.totalMg / items.limitMg);
  const cuts = [0, ...items.groups.map((group) => group.mg).filter((mg) => 2 * mg <= items.limitMg)];
  for (const cut of cuts) least = Math.max(least, overflowBound(items, cut));
  for (let k = 2; k <= DUAL_STEPS; k++) least = Math.max(least, dualBound(items, k));
  return least;
}

/** L2 for one cut: pieces below the cut are left aside. */
function overflowBound({ groups, limitMg }: LoadItems, cutMg: number): number {
  let alone = 0;
  let shared = 0;
  let sharedMg = 0;
  let smallMg = 0;
  for (const { mg, pieces } of groups) {
    if (mg > limitMg - cutMg) alone += pieces.length;
    else if (2 * mg > limitMg) {
      shared += pieces.length;
      sharedMg += mg * pieces.length;
    } else if (mg >= cutMg) smallMg += mg * pieces.length;
  }
  const overflowMg = smallMg - (shared * limitMg - sharedMg);
  return alone + shared + Math.max(0, Math.ceil(overflowMg / limitMg));
}

/** Σ u(k): in units of 1/(k · limit), so that every term is a whole number. */
function dualBound({ groups, limitMg }: LoadItems, k: number): number {
  let sum = 0;
  for (const { mg, pieces } of groups) {
    const scaled = (k + 1) * mg;
    const value = scaled % limitMg === 0 ? mg * k : Math.floor(scaled / limitMg) * limitMg;
    sum += value * pieces.length;
  }
  return Math.ceil(sum / (k * limitMg));
}
