/**
 * May these batches of batter share an oven load? One temperature; no more tins of a kind than are owned; needed
 * at about the same time; room on the shelves; and no batter standing too long while the others are mixed: what
 * stands best is mixed first.
 */
import type { Minute } from '../../domain/calendar.ts';
import { fillShelves, mightFillShelves, type OvenMemory } from './fill-shelves.ts';
import type { Footprint } from './footprint.ts';

/** Tins of one kind in a batch. */
export interface OvenTin {
  tinId: string;
  owned: number;
  count: number;
  footprint: Footprint;
}

/** What is mixed in one go and has to be baked in one go. Times min. */
export interface OvenBatch {
  id: string;
  ovenC: number;
  tins: OvenTin[];
  /** In the oven at the latest. */
  byMin: number;
  /** Mixing, filling and washing up. */
  mixMin: number;
  /** Longest that its filled tins may wait. */
  standsMin: number;
  /** Latest that it may come out. */
  neededBy: Minute;
}

export interface OvenRules {
  memory: OvenMemory;
  /** Cakes needed this close together may share a load. */
  togetherMin: number;
}

/** The batches in the order they are mixed: what stands longest first. */
export const mixingOrder = (batches: readonly OvenBatch[]): OvenBatch[] =>
  [...batches].sort(
    (a, b) => b.standsMin - a.standsMin || b.mixMin - a.mixMin || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );

function nothingStandsTooLong(batches: readonly OvenBatch[]): boolean {
  const order = mixingOrder(batches);
  let waitMin = 0;
  for (const batch of order.reverse()) {
    if (waitMin > batch.standsMin) return false;
    waitMin += batch.mixMin;
  }
  return true;
}

function ownsEnough(batches: readonly OvenBatch[]): boolean {
  const used = new Map<string, number>();
  return batches
    .flatMap(({ tins }) => tins)
    .every(({ tinId, owned, count }) => {
      used.set(tinId, (used.get(tinId) ?? 0) + count);
      return (used.get(tinId) ?? 0) <= owned;
    });
}

function neededTogether(batches: readonly OvenBatch[], togetherMin: number): boolean {
  const needed = batches.map(({ neededBy }) => neededBy);
  return batches.length < 2 || Math.max(...needed) - Math.min(...needed) <= togetherMin;
}

/** One entry a tin, in the order of batches and their tins. */
export const footprintsOf = (batches: readonly OvenBatch[]): Footprint[] =>
  batches.flatMap(({ tins }) =>
    tins.flatMap(({ footprint, count }) => Array.from({ length: count }, () => footprint)),
  );

/** Everything but the room on the shelves. */
function mayMeet(batches: readonly OvenBatch[], { togetherMin }: OvenRules): boolean {
  return (
    batches.every(({ ovenC }) => ovenC === batches[0]?.ovenC) &&
    ownsEnough(batches) &&
    neededTogether(batches, togetherMin) &&
    nothingStandsTooLong(batches)
  );
}

/** Whether the batches go in together, with a placement known. */
export const goTogether = (batches: readonly OvenBatch[], rules: OvenRules): boolean =>
  mayMeet(batches, rules) && fillShelves(footprintsOf(batches), rules.memory) !== null;

/** False when it is proven that they do not. */
export const mightGoTogether = (batches: readonly OvenBatch[], rules: OvenRules): boolean =>
  mayMeet(batches, rules) && mightFillShelves(footprintsOf(batches), rules.memory);
