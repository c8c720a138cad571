/**
 * What a customer gets: tiers, a hand-over, portions and what has been decided. The customer is a reference
 * code and nothing else: names and addresses stay in the baker's own book.
 */
import type { SmallBake } from './bun-tin.ts';
import type { Minute } from './calendar.ts';
import type { QuoteSettings } from './costs.ts';
import type { FinishUse } from './finish.ts';
import type { Minor } from './money.ts';
import type { PortionSize } from './portion.ts';
import type { TinForm } from './tin.ts';
import type { LengthUnit } from './units.ts';

/** The ways a finish can be asked for. */
export const USES: readonly (keyof FinishUse)[] = ['filling', 'coating', 'rolled', 'brushed'];

/** One finish on one tier, and the way it is used there. */
export interface FinishAsk {
  finishId: string;
  use: keyof FinishUse;
  /** What it is tinted, in the customer's word; left out: as it is made. */
  colour?: string;
}

/** What customers call cakes by the piece. */
export type SmallKind = 'cupcakes' | 'fairy cakes' | 'muffins' | 'mini cakes';
export const SMALL_KINDS: readonly SmallKind[] = ['cupcakes', 'fairy cakes', 'muffins', 'mini cakes'];

/** How many small cakes a box takes. */
export const BOX_SIZES = [6, 12, 24] as const;
export type BoxSize = (typeof BOX_SIZES)[number];

/** What only cakes by the piece have. */
export interface SmallCakes {
  kind: SmallKind;
  /** Batter in one case, g; left out: by the volume of the cup. */
  caseG?: number;
  bake: SmallBake;
  /** On each piece, g, in the order in which they go on. */
  toppings: { finishId: string; eachG: number }[];
  box: BoxSize;
}

/** A cake that stands apart from the tiers: cut in the kitchen, or eaten from the hand. */
export type BesideKind = 'cutting cake' | 'small cakes';

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
  /** Shallower bakes of the same tin that make one cake; left out: as few as its height asks for. */
  bakes?: number;
  /** From the inside out; for small cakes: see `small`. */
  finishes: FinishAsk[];
  /** Set for what stands beside the tiers; left out: a tier. */
  beside?: BesideKind;
  /** Set where `beside` is 'small cakes'; `count` is then in pieces. */
  small?: SmallCakes;
}

/** A tier that is not cake: polystyrene, covered like the others. */
export interface DummyTier {
  /** Its place in the stack, from 0 at the bottom, cakes and dummies counted. */
  at: number;
  /** Its plan, and its height as the depth. */
  form: TinForm;
  /** The unit it is written in: printed first. */
  unit: LengthUnit;
  /** From the inside out: coats and sheets only. */
  finishes: FinishAsk[];
  /** Bought for the order, or hired out to the customer, who brings it back. */
  supply: 'bought' | 'hired';
  /** What it costs the baker, or what the customer pays for the hire. */
  eachMinor: Minor;
  /** Of a hire only: it is not cake. */
  vatShare?: number;
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
  /** Hired out: it comes back to the kitchen; left out: it does not. */
  comesBack?: true;
  /** ISO date by which it is to be back. */
  backBy?: string;
  /** It pays for the drive; left out: it does not. */
  delivery?: true;
  /** Share of VAT on this line, 0 to 1; left out: the kitchen's usual for cake. */
  vatShare?: number;
}

/** What the quote of one order says otherwise than the kitchen's usual. */
export interface OrderQuote extends QuoteSettings {
  /** ISO date of the quote; left out: the kitchen's edition. */
  dated?: string;
}

export interface Order {
  id: string;
  title: string;
  /** The customer, as a code: `R-1042`. */
  reference: string;
  /** Every cake: tiers, bottom first where they are stacked, then cutting cakes, then small cakes. */
  tiers: TierAsk[];
  /** Tiers that are not cake, bottom first; left out: none. */
  dummies?: DummyTier[];
  /** `separate`: cakes side by side. */
  arrangement: 'stacked' | 'separate';
  /** Whether a stack is put together before it travels. */
  travelsAssembled: boolean;
  handOver: HandOver;
  portions?: { wanted: number; size: PortionSize['id'] };
  /** The top tier is kept for another day and not counted in the portions. */
  keepsTopTier: boolean;
  extras: OrderExtra[];
  /** Left out: as the kitchen's quotes are. */
  quote?: OrderQuote;
  decisions: Decision[];
  notes: string;
}

/** The cakes that stand among the tiers, bottom first. */
export const tiersOf = ({ tiers }: Pick<Order, 'tiers'>): TierAsk[] =>
  tiers.filter(({ beside }) => beside === undefined);

/** The stack from the bottom up, cakes and dummies in their places. */
export function stackOf({ tiers, dummies = [] }: Pick<Order, 'tiers' | 'dummies'>): (TierAsk | DummyTier)[] {
  const parts: (TierAsk | DummyTier)[] = tiersOf({ tiers });
  for (const dummy of dummies) parts.splice(dummy.at, 0, dummy);
  return parts;
}

export const isDummy = (part: TierAsk | DummyTier): part is DummyTier => 'form' in part;

/** Whether anything stands on anything: two tiers or more, cake or not. */
export const isStacked = (order: Pick<Order, 'arrangement' | 'tiers' | 'dummies'>): boolean =>
  order.arrangement === 'stacked' && tiersOf(order).length + (order.dummies?.length ?? 0) > 1;
