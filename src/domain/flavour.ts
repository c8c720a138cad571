/**
 * A flavour is an ordered list of adjustments to a base formula, each against flour, eggs, the whole batter or
 * an ingredient, never in absolute grams: so it keeps its meaning in every tin and can follow another flavour.
 */
import type { Role } from './ingredient.ts';
import type { FormulaLine, MixingMethod } from './recipe.ts';

/** What a share is a share of, at the moment the adjustment is applied. */
export type Basis = { role: Role } | { ingredientId: string } | { whole: 'batter' };

/** A new line's particulars without its weight. */
export type FormulaEntry = Omit<FormulaLine, 'grams'>;

export type Adjustment =
  /** Take `share` of every line of the basis out and put `portion` times that weight of `entry` in its place. */
  | { kind: 'replace'; basis: Basis; share: number; entry: FormulaEntry; portion: number }
  /** Add `share` × the basis. */
  | { kind: 'add'; basis: Basis; share: number; entry: FormulaEntry }
  /** Multiply every line of the basis. */
  | { kind: 'multiply'; basis: Basis; by: number }
  /** Swap self-raising flour for plain flour and powder, so that its powder can be changed. */
  | {
      kind: 'split-self-raising';
      ingredientId: string;
      flour: FormulaEntry;
      powder: FormulaEntry;
      powderShare: number;
    };

export interface Flavour {
  id: string;
  name: string;
  summary: string;
  /** Recipes or methods it was worked out for. */
  suits: { recipeIds: string[]; methods: MixingMethod[] };
  /** Why the formula still balances, a sentence. */
  why: string;
  /** `kept`: the whole is brought back to the base's weight. `grows`: what is added comes on top. */
  batter: 'kept' | 'grows';
  adjustments: Adjustment[];
  /** Words for the card's method: 'Fold the zest in with the flour.' */
  method?: string;
}
