/** A label, as plain data: lines to set in any size, the figures behind them, and what the baker must still check. */
import type { KindOfSale, LabelRules, LabelSize } from '../domain/label-settings.ts';
import type { Caution, Figure, Named } from './figure.ts';

export interface LabelRun {
  text: string;
  /** An allergen: bold and in capitals. */
  strong: boolean;
}

export type LabelLineId =
  | 'ingredients'
  | 'percentages'
  | 'contains'
  | 'see'
  | 'may-contain'
  | 'cross-contact'
  | 'colours'
  | 'alcohol'
  | 'inedible'
  | 'net'
  | 'date'
  | 'kept'
  | 'storage'
  | 'nutrition'
  | 'business'
  | 'order'
  | 'rules';

export interface LabelLine {
  id: LabelLineId;
  /** 'Ingredients:', set apart from what follows; '' for none. */
  lead: string;
  runs: LabelRun[];
  /** A place to write by hand follows the lead. */
  toWrite: boolean;
}

export interface LabelNutrient {
  id: string;
  name: string;
  /** 'of which': stands in under the one above. */
  within: boolean;
  /** Energy has two figures in one cell: kJ, then kcal. */
  per100G: Figure[];
  perPortion: Figure[];
  /** As shown, with the unit: '1650 kJ / 394 kcal'. */
  per100GText: string;
  perPortionText: string;
}

export interface LabelNutrition {
  title: string;
  per100GHead: string;
  /** '' without portions. */
  perPortionHead: string;
  rows: LabelNutrient[];
}

/** An ingredient in its place, for data files and the page. */
export interface LabelIngredient {
  name: string;
  text: string;
  /** Into the bowl, g. */
  bowl: Figure;
  share: Figure;
  /** Null where its percentage need not be told. */
  quid: Figure | null;
}

export interface LabelView {
  id: string;
  kitchenName: string;
  edition: string;
  foodName: string;
  rules: LabelRules;
  sale: KindOfSale;
  lines: LabelLine[];
  /** The short card: what it contains, and what may have got in. */
  card: LabelLine[];
  nutrition: LabelNutrition | null;
  ingredients: LabelIngredient[];
  /** As a sentence lists them: 'wheat', 'milk'. */
  allergens: string[];
  mayContain: string[];
  finished: Figure;
  keeps: Figure;
  keepsText: string;
  storageText: string;
  /** What the rules ask, what is missing, what ties: for the page and the foot of a sheet, never on the label. */
  notes: string[];
  cautions: Caution[];
  xHeightMm: number;
  sizes: LabelSize[];
}

/** A label that can be made, or the reasons why not. */
export interface LabelOutcome {
  id: string;
  foodName: string;
  view: LabelView | null;
  refusals: { code: string; text: string; hint: string }[];
}

/** The label of a recipe and its flavours, made without an order. */
export interface SampleLabel extends LabelOutcome {
  recipe: Named;
  flavours: Named[];
}
