/** What a mix is made of, before anyone words or draws it. All masses in g, lengths in mm, volumes in mL. */
import type { EggPart } from '../../domain/egg.ts';
import type { Role } from '../../domain/ingredient.ts';
import type { Kitchen } from '../../domain/kitchen.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Formula, Recipe } from '../../domain/recipe.ts';
import type { Tin } from '../../domain/tin.ts';
import type { YieldDensity } from '../batter/yield-density.ts';
import type { EggPlan, EggRule } from '../eggs/whole-eggs.ts';

/** Tins of one kind to fill, optionally to a height of their own. */
export interface TinAsk {
  tin: Tin;
  count: number;
  heightMm?: number;
  /** Worked out elsewhere, as for a tin of several cups: baked height, the batter of the whole tin, g, and its cups. */
  settled?: { heightMm: number; batterG: number; pieces: number };
}

/** What flavours did to the formula; leave it out for the plain recipe. */
export interface AppliedFlavours {
  flavourIds: string[];
  /** Batter a tin is given over what the base recipe would give it. */
  growth: number;
  warnings: Warning[];
}

export type MixKitchen = Pick<Kitchen, 'egg' | 'scale' | 'mixer' | 'fairyCaseG'>;

export interface MixInput {
  recipe: Recipe;
  flavours?: AppliedFlavours;
  /** After flavours; the recipe's own without any. */
  formula: Formula;
  asks: TinAsk[];
  kitchen: MixKitchen;
}

export interface MixTin {
  tin: Tin;
  count: number;
  /** Cups filled in each, where it is a tin of several. */
  pieces?: number;
  finishedHeightMm: number;
  heightFrom: 'asked' | 'recipe' | 'tin';
  planAreaMm2: number | null;
  perimeterMm: number | null;
  /** To the rim, one tin. */
  volumeMl: number;
  /** To the finished height, one tin. */
  finishedVolumeMl: number;
  /** What one tin asks for, before eggs are rounded. */
  batterGEach: number;
  /** What one tin gets: less than it asks for when the mix falls short, shared by volume. */
  receivesG: number;
  rawVolumeMl: number;
  rawFillMm: number;
  /** Raw height that bakes level with the rim. */
  fillLimitMm: number;
  warnings: Warning[];
}

export interface MixLine {
  ingredientId: string;
  name: string;
  role: Role;
  fine: boolean;
  eggPart?: EggPart;
  /** After scaling to whole eggs, before rounding. */
  exactG: number;
  /** What goes into the bowl. */
  grams: number;
  /** Scale step used; null for counted eggs and for sums of loads weighed to different steps. */
  stepG: number | null;
}

export interface LoadTin {
  /** Index into the mix's tins. */
  tin: number;
  count: number;
  /** Set when the load holds one of so many parts of a tin that exceeds the bowl. */
  ofParts?: number;
  /** How many of those parts it holds; 1 where the parts are equal. */
  parts?: number;
  askedG: number;
  receivesG: number;
}

export interface MixLoad {
  tins: LoadTin[];
  askedG: number;
  /** Asked batter ÷ the formula's total, before eggs are rounded. */
  askedScale: number;
  /** Weighed ingredients against the formula. */
  scale: number;
  eggs: EggPlan | null;
  lines: MixLine[];
  batterG: number;
  surplusG: number;
}

/** Eggs of a whole mix: the sums of its loads'. */
export interface MixEggs {
  rule: EggRule;
  exact: number;
  whole: number;
  deviation: number;
  parts: { ingredientId: string; part: EggPart; exact: number; whole: number; grams: number }[];
}

export interface Mix {
  recipeId: string;
  flavourIds: string[];
  density: YieldDensity;
  /** Batter per mL of finished cake with the flavours' growth in it. */
  gPerMl: number;
  formulaG: number;
  tins: MixTin[];
  /** Σ count × batterGEach. */
  askedG: number;
  scale: number;
  /** Null for a formula without eggs. */
  eggs: MixEggs | null;
  lines: MixLine[];
  /** Σ lines. */
  batterG: number;
  /** batterG − askedG: signed. */
  surplusG: number;
  loads: MixLoad[];
  warnings: Warning[];
}
