/**
 * What a label is made from: plain values, so that a tier of an order and a sample of a recipe go the same way.
 * Weights are those of this one cake: what went into the bowl for it, not what was left in the bowl or trimmed off.
 */
import type { Finish } from '../../domain/finish.ts';
import type { Ingredient } from '../../domain/ingredient.ts';
import type { Business, LabelSettings } from '../../domain/label-settings.ts';
import type { FinishUseName } from '../finishes/amount.ts';

/** As weighed in, eggs shelled. */
export interface WeighedIn {
  ingredientId: string;
  grams: number;
}

export interface LabelSponge {
  /** 'Equal-weights vanilla sponge'. */
  name: string;
  /** For this cake: the mix's lines × the tin's share of the mix. */
  formula: readonly WeighedIn[];
  /** Share of the batter that leaves as steam, 0 to 1; see ./sponge-usual.ts. */
  waterLossShare: number;
  /** Days that the sponge itself keeps; see ./sponge-usual.ts. */
  keepsDays: number;
}

export interface LabelFinish {
  finish: Finish;
  use: FinishUseName;
  /** Of finished filling or coating on the cake, without losses and offcuts, g. */
  onCakeG: number;
}

/** What only an order knows; a sample has none of it. */
export interface LabelFacts {
  /** Day on which the cake is finished, ISO date; null: the label leaves a place to write its date. */
  madeOn: string | null;
  /** Day on which the sponge left the oven, and each finish was made, by id; left out: the day it is finished. */
  bakedOn?: string;
  finishesMadeOn?: Readonly<Record<string, string>>;
  /** Day on which it changes hands; left out: the day it is finished. A cake past its keeping by then has no label. */
  handOverOn?: string;
  /** A tier kept for another day: when it is frozen and until when it may be eaten, ISO dates; left out: it is not. */
  frozen?: { freezeOn: string; eatBy: string };
  /** What must come off before it is eaten: supports, toppers, wired flowers. */
  inedible: readonly string[];
  /** The order's code, printed so that a label finds its order; null on a sample. */
  reference: string | null;
}

export const NO_FACTS: LabelFacts = { madeOn: null, inedible: [], reference: null };

export interface LabelInput {
  /** Names files: 'vanilla-equal-weights--orange', 'wedding-tier-1'. */
  id: string;
  /** The name of the food: 'Orange sponge cake with raspberry jam'. */
  foodName: string;
  sponges: readonly LabelSponge[];
  finishes: readonly LabelFinish[];
  /** Everything on the shelf. */
  ingredients: readonly Ingredient[];
  settings: LabelSettings;
  business: Business | null;
  /** Null: figures per portion are left out. */
  portions: number | null;
  /**
   * What the name points at, for its percentage: ids of ingredients and finishes, or the label name of a part
   * ('strawberry' in a jam). Null: found by the words of the name.
   */
  named: readonly string[] | null;
  facts: LabelFacts;
}
