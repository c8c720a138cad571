/**
 * What a customer gets: tiers, a hand-over, portions and what has been decided. The customer is a reference
 * code and nothing else: names and addresses stay in the baker's own book.
 */
import type { Minute } from './calendar.ts';
import type { FinishUse } from './finish.ts';
import type { Minor } from './money.ts';
import type { PortionSize } from './portion.ts';

/** The ways a finish can be asked for. */
export const USES: readonly (keyof FinishUse)[] = ['filling', 'coating', 'rolled', 'brushed'];

/** One finish on one tier, and the way it is used there. */
export interface FinishAsk {
  finishId: string;
  use: keyof FinishUse;
}

/** A cake in the order: tin × recipe × flavours × finished height × layers × finishes. */
export interface TierAsk {
  tinId: string;
  recipeId: string;
  flavourIds: string[];
  /** How many such cakes: two trays for a fair. */
  count: number;
  /** Baked height; left out: the recipe's. */
  finishedHeightMm?: number;
  /** Slices of sponge; left out: the recipe's. */
  layers?: number;
  /** From the inside out. */
  finishes: FinishAsk[];
}

/** Where it changes hands; only the kind, never an address. */
export type PlaceKind = 'collected' | 'delivered' | 'set up at the venue' | 'sold at a stall';
export const PLACE_KINDS: readonly PlaceKind[] = [
  'collected',
  'delivered',
  'set up at the venue',
  'sold at a stall',
];

/** An instant as people say it: wall-clock time and the zone it is told in. */
export interface HandOver {
  /** `2026-11-28T14:00`. */
  localTime: string;
  /** IANA name: `Europe/London`. */
  zone: string;
  place: PlaceKind;
  /** The same as an instant, minutes since 1970-01-01 00:00 UTC: worked out when the order is read. */
  minute: Minute;
}

/** Something that was left open and is now settled, or is still to settle. */
export interface Decision {
  question: string;
  /** Null while nobody has answered. */
  answer: string | null;
  /** ISO date by which it must be settled. */
  by?: string;
}

/** What is sold beside the tiers: hire of a stand, a topper, a box of fairy cakes bought in. */
export interface OrderExtra {
  name: string;
  count: number;
  eachMinor: Minor;
  /** Must come off before the cake is eaten. */
  inedible: boolean;
  /** Share of VAT on this line, 0 to 1; left out: the kitchen's usual for cake. */
  vatShare?: number;
}

export interface Order {
  id: string;
  title: string;
  /** The customer, as a code: `R-1042`. */
  reference: string;
  /** Bottom first where they are stacked. */
  tiers: TierAsk[];
  /** `separate`: cakes side by side. */
  arrangement: 'stacked' | 'separate';
  /** Whether a stack is put together before it travels. */
  travelsAssembled: boolean;
  handOver: HandOver;
  portions?: { wanted: number; size: PortionSize['id'] };
  /** The top tier is kept for another day and not counted in the portions. */
  keepsTopTier: boolean;
  extras: OrderExtra[];
  decisions: Decision[];
  notes: string;
}
