/** An order worked out: what is mixed, baked, filled, coated and handed over. g, mm, min, quantised. */
import type { Finish } from '../../domain/finish.ts';
import type { Flavour } from '../../domain/flavour.ts';
import type { DummyTier, Order, TierAsk } from '../../domain/order.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Formula, Recipe } from '../../domain/recipe.ts';
import type { Tin } from '../../domain/tin.ts';
import type { BakeAdvice } from '../bake/index.ts';
import type { FinishAmount } from '../finishes/finishing.ts';
import type { Mix } from '../mixes/plan-mix.ts';
import type { Levelled } from './levelled.ts';

/** Batter made together: the tiers of one recipe with the same flavours. */
export interface PlannedMix {
  recipe: Recipe;
  flavours: Flavour[];
  /** After flavours and altitude. */
  formula: Formula;
  mix: Mix;
  /** Something in it lifts as soon as it is wet: it goes into the oven at once. */
  actsAtOnce: boolean;
  /** For every tin of the mix, the tier it belongs to: an index into the order's tiers, which may come twice. */
  tierAt: number[];
}

/** How small cakes stand in their tins: so many cups to a tin, filled so often. */
export interface SmallTins {
  cups: number;
  tins: number;
  /** One cup, inside. */
  cup: Tin;
}

/** One finish on one tier, for all its cakes together. */
export interface TierFinish {
  finish: Finish;
  /** As asked, or `dam` for the bead that holds a soft filling. */
  use: FinishAmount['use'];
  /** What it is tinted; left out: as it is made. */
  colour?: string;
  /** For the whole tier: needed, made with the loss, parts unrounded. */
  amount: FinishAmount;
}

export interface PlannedTier {
  /** Place in the order, bottom first, from 0. */
  at: number;
  ask: TierAsk;
  /** For small cakes what stands in the oven: all cups together. */
  tin: Tin;
  /** Null for anything but small cakes. */
  smallTins: SmallTins | null;
  recipe: Recipe;
  flavours: Flavour[];
  /** Cakes of this kind; pieces of small ones. */
  count: number;
  layers: number;
  /** Which mix, and which of its tins; of small cakes the first. */
  mixAt: number;
  mixTinAt: number;
  /** Baked height of one cake. */
  finishedHeightMm: number;
  /** Bakes of the tin that make one cake, and the height of each. */
  bakes: number;
  bakeHeightMm: number;
  /** What is cut off to make it level, and what that leaves. */
  level: Levelled;
  /** Sponge with its fillings, before anything is put round it. */
  builtHeightMm: number;
  /** With coats and sheets on; the plain cake's where it has none. */
  coatedHeightMm: number;
  /** Longest way across with coats and sheets on; null for a tin known only by the water it holds. */
  coatedAcrossMm: number | null;
  /** Batter that one cake gets once the mix's eggs are whole. */
  receivesG: number;
  finishes: TierFinish[];
  /** Board and ribbon of one cake by itself; null where nobody knows how wide it is. */
  boardAcrossMm: number | null;
  ribbonMm: number | null;
  /** Pieces from one cake cut in rows; null where nobody knows its plan. */
  portionsEach: number | null;
  /** The same round cut in rings. */
  inRings: number | null;
  /** One cake as it is handed over, without boards. */
  weightGEach: number;
  /** What to set and when to look; null when the oven is too cool, and for small cakes, which have their own. */
  bake: BakeAdvice | null;
  /** Whether the kitchen's heating core stands in it, or its insulated band lies round it. */
  withCore: boolean;
  withBand: boolean;
  warnings: Warning[];
}

/** A tier that is not cake, covered like one. */
export interface PlannedDummy {
  /** Among the dummies, from 0 at the bottom. */
  at: number;
  ask: DummyTier;
  /** Its form, as if it were the tin of a cake. */
  tin: Tin;
  builtHeightMm: number;
  coatedHeightMm: number;
  coatedAcrossMm: number | null;
  finishes: TierFinish[];
  boardAcrossMm: number | null;
  ribbonMm: number | null;
  /** Polystyrene and what is on it, without boards. */
  weightGEach: number;
}

/** A part of a finish as it is weighed for the whole order. */
export interface FinishLine {
  ingredientId: string;
  name: string;
  grams: number;
  /** Whole eggs, yolks or whites to crack for it; null for what is weighed. */
  eggs: number | null;
}

/** One finish over all tiers, made in one go. */
export interface PlannedFinish {
  finish: Finish;
  /** On the cakes. */
  neededG: number;
  /** Made, with what stays in the bowl. */
  makeG: number;
  /** What of it is tinted in which colour, the untinted rest with null; none where nothing is tinted. */
  colours: { colour: string | null; neededG: number; makeG: number }[];
  lines: FinishLine[];
}

/** How much of an ingredient an order takes: g as weighed, and eggs where they are counted. */
export interface IngredientUse {
  ingredientId: string;
  grams: number;
  eggs: number | null;
}

export interface PlannedOrder {
  order: Order;
  mixes: PlannedMix[];
  tiers: PlannedTier[];
  /** Bottom first. */
  dummies: PlannedDummy[];
  finishes: PlannedFinish[];
  /** Every ingredient of mixes and finishes, by id. */
  uses: IngredientUse[];
  /** Pieces in all tiers that are cut on the day. */
  portions: number;
  /** Portions beyond what is wanted; null when the order does not say. */
  portionsOver: number | null;
  /** All cakes and dummies without boards. */
  weightG: number;
  /** Stacked: all tiers, without boards and what stands beside them; separate: the tallest cake. */
  heightMm: number;
  warnings: Warning[];
}
