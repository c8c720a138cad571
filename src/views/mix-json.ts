/** The answer to `mix --json`: names and units as the contract has them, quantised, nothing worded. */
import type { EggPlan } from '../compute/eggs/whole-eggs.ts';
import type { Mix, MixEggs, MixTin } from '../compute/mixes/mix.types.ts';
import type { EggSetting, Locale } from '../domain/kitchen.ts';
import type { Warning } from '../domain/problem.ts';
import { bakeFigures } from './bake-figures.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

export interface EggsJson {
  exact: number | null;
  whole: number | null;
  rule: 'nearest' | 'step-up' | 'weigh' | 'none';
  deviation: number | null;
  /** Eggs, yolks and whites apart, where the formula has more than one kind. */
  parts?: { id: string; part: 'egg' | 'yolk' | 'white'; exact: number; whole: number }[];
}

export interface MixTinJson {
  tin: string;
  count: number;
  plan_area_mm2: number | null;
  perimeter_mm: number | null;
  volume_ml: number;
  batter_g_each: number;
  receives_g_each: number;
  raw_fill_mm: number;
  finished_height_mm: number;
  /** Null where an oven is too cool to bake in; left out where times were not asked for. */
  bake?: MixBakeJson | null;
}

export interface MixBakeJson {
  dial_c: number;
  first_look_min: number;
  likely_min: number;
  done_by_min: number;
  core: boolean;
  band: boolean;
  logged_bakes: number;
}

export interface MixJson {
  recipe: string;
  flavours: string[];
  finished_height_mm: number;
  egg_size: string | null;
  tins: MixTinJson[];
  mix: {
    batter_g: number;
    scale: number;
    eggs: EggsJson;
    ingredients: { id: string; grams: number }[];
    surplus_g: number;
  };
  /** Bowlfuls; the mix's eggs are the sum of theirs. */
  loads: { batter_g: number; eggs: EggsJson }[];
  warnings: Warning[];
}

function eggsJson(eggs: MixEggs | EggPlan | null): EggsJson {
  if (eggs === null) return { exact: null, whole: null, rule: 'none', deviation: null };
  const { exact, whole, rule, deviation } = eggs;
  if (eggs.parts.length < 2) return { exact, whole, rule, deviation };
  const parts = eggs.parts.map((each) => ({
    id: each.ingredientId,
    part: each.part,
    exact: each.exact,
    whole: each.whole,
  }));
  return { exact, whole, rule, deviation, parts };
}

function bakeJson(tin: MixTin, bakes: RecipeBakes, locale: Locale): MixBakeJson | null {
  const bake = bakeFigures(bakes, tin.tin, tin.finishedHeightMm, locale);
  if (bake === null) return null;
  return {
    dial_c: bake.dial.value,
    first_look_min: bake.firstLook.value,
    likely_min: bake.likely.value,
    done_by_min: bake.expectedBy.value,
    core: bake.core,
    band: bake.band,
    logged_bakes: bake.bakes.value,
  };
}

function tinJson(tin: MixTin, { bakes, locale = 'en-GB' }: MixAsked): MixTinJson {
  const bake = bakes === undefined ? {} : { bake: bakeJson(tin, bakes, locale) };
  return {
    tin: tin.tin.id,
    count: tin.count,
    plan_area_mm2: tin.planAreaMm2,
    perimeter_mm: tin.perimeterMm,
    volume_ml: tin.volumeMl,
    batter_g_each: tin.batterGEach,
    receives_g_each: tin.receivesG,
    raw_fill_mm: tin.rawFillMm,
    finished_height_mm: tin.finishedHeightMm,
    ...bake,
  };
}

export interface MixAsked {
  /** The height that was asked for, else the recipe's own, mm. */
  finishedHeightMm: number;
  egg: Pick<EggSetting, 'size'>;
  /** What the log taught of the recipe, for bake times. */
  bakes?: RecipeBakes;
  locale?: Locale;
}

/** A mix as the contract's JSON; `egg_size` is null where the kitchen only weighs its own eggs. */
export function mixJson(mix: Mix, asked: MixAsked): MixJson {
  const { size } = asked.egg;
  return {
    recipe: mix.recipeId,
    flavours: mix.flavourIds,
    finished_height_mm: asked.finishedHeightMm,
    egg_size: size === null ? null : `${size.scheme} ${size.grade}`,
    tins: mix.tins.map((tin) => tinJson(tin, asked)),
    mix: {
      batter_g: mix.batterG,
      scale: mix.scale,
      eggs: eggsJson(mix.eggs),
      ingredients: mix.lines.map((line) => ({ id: line.ingredientId, grams: line.grams })),
      surplus_g: mix.surplusG,
    },
    loads: mix.loads.map((load) => ({ batter_g: load.batterG, eggs: eggsJson(load.eggs) })),
    warnings: mix.warnings,
  };
}
