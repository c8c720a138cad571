/**
 * What a label must say depends on the country's rules and on the kind of sale: a cake made to order and boxed
 * afterwards is not prepacked for direct sale, and one sold at a distance needs its allergens told twice.
 */
import type { Allergen } from './ingredient.ts';

export type LabelRules = 'UK' | 'EU' | 'US';
export const LABEL_RULES: readonly LabelRules[] = ['UK', 'EU', 'US'];

export type SaleKind = 'made to order' | 'prepacked for direct sale' | 'prepacked' | 'distance';
export const SALE_KINDS: readonly SaleKind[] = [
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

/** Who makes the food, as a label must say it. */
export interface Business {
  name: string;
  /** One line each. */
  address: string[];
  contact?: string;
}

/** `label:` in kitchen.yaml. */
export interface LabelSettings {
  rules: LabelRules;
  sale: SaleKind;
  /** Only what the baker declares; never worked out. */
  mayContain: Allergen[];
  /** The longest the kitchen promises, days; a filling that keeps less shortens it. */
  durabilityDays?: number;
  /** The baker's own words; left out: worked out from filling and coating. */
  storage?: string;
  /** Height of a lower-case x, mm: never below what the rules ask. */
  xHeightMm: number;
  /** Largest side of the pack, cm²; below 80 the rules let type be smaller. Left out: large. */
  packSurfaceCm2?: number;
  sizes: LabelSize[];
}

/** A tier's usual label and a short card. */
export const USUAL_LABEL_SIZES: readonly LabelSize[] = [
  { widthMm: 100, heightMm: 140 },
  { widthMm: 90, heightMm: 55 },
];

export const USUAL_LABEL: LabelSettings = {
  rules: 'UK',
  sale: 'made to order',
  mayContain: [],
  xHeightMm: 1.2,
  sizes: [...USUAL_LABEL_SIZES],
};
