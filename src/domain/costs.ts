/**
 * What the kitchen reckons its work, energy and packaging at, and the margin it asks. Rates may have fractions
 * of a minor unit; every line of a cost is rounded to a whole one before it is added.
 */
import { type Currency, type Minor, POUNDS } from './money.ts';

/**
 * What one packaging line is counted by: once an order, for every cake or dummy tier in it, for every cutting cake,
 * for every small cake, or for every box of so many of them.
 */
export type PackagingPer =
  | 'order'
  | 'cake'
  | 'cutting cake'
  | 'small cake'
  | 'box of 6'
  | 'box of 12'
  | 'box of 24';
export const PACKAGING_PER: readonly PackagingPer[] = [
  'order',
  'cake',
  'cutting cake',
  'small cake',
  'box of 6',
  'box of 12',
  'box of 24',
];

export interface PackagingCost {
  name: string;
  eachMinor: Minor;
  per: PackagingPer;
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
