/**
 * Who is behind a label and by which rules it is written. What it must say depends on the country and on the kind
 * of sale: a cake made to order and boxed afterwards is not prepacked for direct sale, and one sold at a distance
 * needs its allergens told twice. What nobody has filled in is null, never guessed.
 */

import type { Allergen } from './ingredient.ts';
import type { FinishAsk } from './order.ts';

/** Name and address block of a label, a quote and an order sheet. */
export interface Business {
  name: string;
  /** Line by line. */
  address: string[];
  contact?: string;
}

export type LabelRules = 'UK' | 'EU' | 'US';
export const LABEL_RULES: readonly LabelRules[] = ['UK', 'EU', 'US'];

export type KindOfSale = 'made to order' | 'prepacked for direct sale' | 'prepacked' | 'distance';
export const KINDS_OF_SALE: readonly KindOfSale[] = [
  'made to order',
  'prepacked for direct sale',
  'prepacked',
  'distance',
];

/** Outside of one label on its sheet. */
export interface LabelSize {
  widthMm: number;
  heightMm: number;
}

/** The cake that labels are shown for while there is no order: a tin and what usually goes on. */
export interface LabelSample {
  tinId: string;
  finishes: FinishAsk[];
}

/** `label:` in kitchen.yaml. */
export interface LabelSettings {
  rules: LabelRules;
  sale: KindOfSale;
  /** Cross-contact that the baker declares; never worked out. */
  mayContain: Allergen[];
  /** The longest the kitchen promises; a filling that keeps less shortens it. */
  durabilityDays?: number;
  /** The baker's own words; left out: worked out from filling and coating. */
  storage?: string;
  /** Height of a lower-case x, mm: at least what the rules ask. */
  xHeightMm: number;
  /** Largest side of the pack, cm²; below 80 the rules let type be smaller. Left out: a large pack. */
  packSurfaceCm2?: number;
  sizes: LabelSize[];
  /** Left out: sponges alone. */
  sample?: LabelSample;
  /** Words of names that stand for several ingredients together: ids by word, 'fruit': currants, sultanas. */
  named?: Record<string, string[]>;
}

/** A label for a cake box, four to a sheet, and a card to stand beside a cake; our own sizes. */
const USUAL_LABEL_SIZES: readonly LabelSize[] = [
  { widthMm: 85, heightMm: 110 },
  { widthMm: 85, heightMm: 55 },
];

/** Regulation (EU) 1169/2011 Art. 13(2): x-height of 1.2 mm or more (from memory). */
export const USUAL_LABEL: LabelSettings = {
  rules: 'UK',
  sale: 'made to order',
  mayContain: [],
  xHeightMm: 1.2,
  sizes: [...USUAL_LABEL_SIZES],
};

/** What a label may have to say. */
export type LabelElement =
  | 'name'
  | 'ingredients'
  | 'allergens'
  | 'percentages'
  | 'net-quantity'
  | 'date'
  | 'storage'
  | 'business'
  | 'nutrition';

/** How a cake is kept until it is eaten. */
export type StorageKind =
  | 'chilled'
  | 'chilled-and-tempered'
  | 'dry-same-day'
  | 'dry-under-sheet'
  | 'cool'
  | 'box';
