/** A label worked out: what it must say, without the words of any language but the ingredients' own names. */
import type { Allergen } from '../../domain/ingredient.ts';
import type { KindOfSale, LabelElement, LabelRules, StorageKind } from '../../domain/label-settings.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Nutrition } from '../nutrition/nutrition.ts';

/** An allergen under the name that the label must show: 'wheat', 'almonds', 'egg'. */
export interface ToldAllergen {
  allergen: Allergen;
  name: string;
}

export interface TextPiece {
  text: string;
  /** Null: plain text. */
  allergen: Allergen | null;
}

/** One ingredient of the list, in its place. */
export interface LabelEntry {
  /** As the label calls it. */
  name: string;
  ingredientIds: string[];
  /** Into the mixing bowl, g. */
  bowlG: number;
  /** Share of the mixing bowl; Σ over a label, with the water that is gone, is 1. */
  share: number;
  /** What its place is decided by, g: the bowl's weight; for added water, what of it is left. */
  rankG: number;
  /** The name with its allergens, and in brackets what it is made of. */
  pieces: TextPiece[];
  /** How many of the pieces are the name before its brackets: a percentage goes after them. */
  namePieces: number;
  /** Percentage that must stand beside it; null where the name of the food does not point at it. */
  quid: number | null;
}

/** A percentage that belongs to no single entry: a finish, or a part of a compound ingredient. */
export interface LooseQuid {
  name: string;
  /** Of 100 g finished, g; may pass 100 where water is lost. */
  per100G: number;
}

export interface Durability {
  keepsDays: number;
  /** What keeps the shortest; null where no part does: the kitchen's own limit, or the way parts stand together. */
  decidedBy: string | null;
  /** Food that spoils fast has a date to use it by; everything else one that it is best before. */
  kind: 'use by' | 'best before';
  /** ISO date; null until it is known when the cake was made. */
  date: string | null;
  /** Day on which what decides was made, ISO date; null while unknown. */
  countsFrom: string | null;
}

export interface Label {
  id: string;
  foodName: string;
  reference: string | null;
  rules: LabelRules;
  rulesSince: string;
  rulesNamed: string;
  sale: KindOfSale;
  entries: LabelEntry[];
  looseQuids: LooseQuid[];
  /** Names of ingredients that weigh the same and stand in the order they went in. */
  ties: string[][];
  /** Share of the bowl that was added water and left whole as steam: not in the food, and so not in the list. */
  goneShare: number;
  allergens: ToldAllergen[];
  mayContain: Allergen[];
  containsLine: boolean;
  bowlG: number;
  finishedG: number;
  durability: Durability;
  storage: StorageKind;
  /** Names of colours of which a warning must be given. */
  colours: string[];
  /** Label names of what brings alcohol, where there is enough to say so. */
  alcohol: string[];
  inedible: string[];
  /** Null where an ingredient's figures are missing. */
  nutrition: Nutrition | null;
  nutritionMissing: string[];
  portions: number | null;
  /** Needed by these rules for this kind of sale. */
  needs: LabelElement[];
  /** Needed and not there. */
  gaps: LabelElement[];
  warnings: Warning[];
}
