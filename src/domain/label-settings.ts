/** Who is behind a label and by which rules it is written. What nobody has filled in is null, never guessed. */
import type { Allergen } from './ingredient.ts';

/** Name and address block of a label, a quote and an order sheet. */
export interface Business {
  name: string;
  /** Line by line. */
  address: string[];
  contact?: string;
}

export type LabelRules = 'UK' | 'EU' | 'US';
export const LABEL_RULES: readonly LabelRules[] = ['UK', 'EU', 'US'];

export type KindOfSale = 'made to order' | 'prepacked for direct sale' | 'prepacked' | 'loose';
export const KINDS_OF_SALE: readonly KindOfSale[] = [
  'made to order',
  'prepacked for direct sale',
  'prepacked',
  'loose',
];

export interface LabelSettings {
  rules: LabelRules;
  sale: KindOfSale;
  /** Cross-contact that the baker declares; never worked out. */
  mayContain: Allergen[];
  durabilityDays?: number;
  storage?: string;
  /** Smallest x-height of the text, mm: 1.2, or 0.9 on a small pack. */
  xHeightMm: number;
}

/** Regulation (EU) 1169/2011 Art. 13(2): x-height of 1.2 mm or more (from memory). */
export const USUAL_LABEL: LabelSettings = {
  rules: 'UK',
  sale: 'made to order',
  mayContain: [],
  xHeightMm: 1.2,
};
