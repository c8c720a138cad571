/**
 * What the kitchen reckons its work, energy and packaging at, and the margin it asks. Rates may have fractions
 * of a minor unit; every line of a cost is rounded to a whole one before it is added.
 */

import { type Currency, type Minor, POUNDS } from './money.ts';
import type { Pack } from './pack.ts';

/**
 * What one packaging line is counted by: once an order, for every cake or dummy tier in it, for every cutting cake,
 * for every small cake, or for every box of so many of them; or as the stack and the boxes are counted: drums and
 * cards, supports and the dowel through all tiers, boxes for cakes, ribbon by the metre, tins to line, and drives
 * to hand an order over: fuel and wear, which nobody shops for.
 */
export type PackagingPer =
  | 'order'
  | 'cake'
  | 'cutting cake'
  | 'small cake'
  | 'box of 6'
  | 'box of 12'
  | 'box of 24'
  | MadeUpPer;
/** Counted by how the order is made up, not by what it asks for. */
export type MadeUpPer =
  | 'drum'
  | 'card'
  | 'cake box'
  | 'support'
  | 'centre dowel'
  | 'metre of ribbon'
  | 'lined tin'
  | 'drive';
/** Boards and boxes come in widths. */
export type SizedPer = 'drum' | 'card' | 'cake box';
export const PACKAGING_PER: readonly PackagingPer[] = [
  'order',
  'cake',
  'cutting cake',
  'small cake',
  'box of 6',
  'box of 12',
  'box of 24',
  'drum',
  'card',
  'cake box',
  'support',
  'centre dowel',
  'metre of ribbon',
  'lined tin',
  'drive',
];

export interface PackagingCost {
  name: string;
  /** Price of one as used: what an order is charged, whatever pack it came from. */
  eachMinor: Minor;
  per: PackagingPer;
  /** Prices by width, narrowest first, of boards and boxes; what is wider than all of them costs `eachMinor`. */
  sizes?: { acrossMm: number; eachMinor: Minor }[];
  /** How shops sell it, smallest first, sizes by count; left out: one by one, at `eachMinor`. */
  packs?: Pack[];
  /** How many there are; left out: none. */
  onHand?: number;
}

/** What a quote says of when to accept and to pay; what is left out it does not say. */
export interface QuoteSettings {
  /** Days from its date in which it may be accepted. */
  validDays?: number;
  /** Share of the whole that is asked for the booking, 0 to 1; 0 for none. */
  depositShare?: number;
  /** Days from the quote's date by which the deposit is due; left out: when the quote is accepted. */
  depositDueDays?: number;
  /** Days before the hand-over by which the rest is due; left out: at the hand-over. */
  balanceDueDays?: number;
}

export interface CostSettings {
  currency: Currency;
  labourMinorPerH: number;
  overheadMinorPerH: number;
  electricityMinorPerKwh: number;
  /** Share of the price that is left when the cost is paid, 0 to below 1: price = cost ÷ (1 − margin). */
  margin: number;
  /** Prices go up to the next multiple of this. */
  roundUpToMinor: Minor;
  /** Share of VAT on cake, 0 to 1; extras may have their own. */
  vatShare: number;
  packaging: PackagingCost[];
  /** Left out: quotes say neither how long they hold nor when to pay. */
  quote?: QuoteSettings;
}

/** A kitchen that has named no prices: nothing is charged that nobody has written down. */
export const NO_COSTS: CostSettings = {
  currency: POUNDS,
  labourMinorPerH: 0,
  overheadMinorPerH: 0,
  electricityMinorPerKwh: 0,
  margin: 0,
  roundUpToMinor: 1,
  vatShare: 0,
  packaging: [],
};
