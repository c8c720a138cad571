/**
 * The question the other way round: given eggs, or batter by weight, which of the tins owned can be filled?
 * A number of eggs makes the formula's batter in proportion; a fill fits when the kitchen's own egg rule
 * would have used no more than those eggs for it.
 */
import type { Kitchen } from '../../domain/kitchen.ts';
import { quantiseG } from '../../domain/quantise.ts';
import type { Formula, Recipe } from '../../domain/recipe.ts';
import type { Tin } from '../../domain/tin.ts';
import { finishedHeight } from '../batter/finished-height.ts';
import { batterG, yieldDensity } from '../batter/yield-density.ts';
import { mostServedBy, scaleForEggs } from '../eggs/whole-eggs.ts';
import { formulaG } from '../mixes/mix-load.ts';
import { volumeToHeightMl } from '../shapes/index.ts';
import { bestFills, type Fillable, type Fills } from './best-fills.ts';

export interface FillInput {
  recipe: Recipe;
  formula: Formula;
  kitchen: Pick<Kitchen, 'egg' | 'tins'>;
  /** Batter a tin is given over the base recipe's, after flavours. Default 1. */
  growth?: number;
}

function takesG(recipe: Recipe, gPerMl: number, tin: Tin): number {
  const height = finishedHeight(recipe, tin);
  return height.ok ? batterG(gPerMl, volumeToHeightMl(tin, height.value.heightMm)) : 0;
}

/** What each owned tin takes of this recipe, g, in the shelf's order. */
export function shelfFor({ recipe, kitchen, growth = 1 }: FillInput): Fillable[] {
  const density = yieldDensity(recipe);
  if (density === null) return [];
  return kitchen.tins
    .filter((tin) => tin.owned > 0)
    .map((tin) => ({ id: tin.id, owned: tin.owned, batterG: takesG(recipe, density.gPerMl * growth, tin) }));
}

/** Best fills for an amount of batter, g. */
export function fillsForBatter(input: FillInput, haveG: number, best = 20): Fills {
  return bestFills(shelfFor(input), { batterG: haveG, best });
}

/** Exact batter of a number of whole eggs (of the part that decides), g; null for a formula without eggs. */
export function batterForEggsG(input: Pick<FillInput, 'formula' | 'kitchen'>, eggs: number): number | null {
  const scale = scaleForEggs(input.formula, eggs, input.kitchen.egg);
  return scale === null ? null : quantiseG(formulaG(input.formula) * scale);
}

/**
 * Most that the batter of so many eggs may be asked for, g: a mix within tolerance is short by no more than
 * the tolerance of its eggs, and neither may a fill be.
 */
export function mostFilledG(
  input: Pick<FillInput, 'formula' | 'kitchen'>,
  eggs: number,
  haveG: number,
): number {
  const { egg } = input.kitchen;
  const eggG = input.formula.reduce((sum, line) => sum + (line.eggPart === undefined ? 0 : line.grams), 0);
  const shortG = (haveG * egg.tolerance * eggG) / formulaG(input.formula);
  const mostG = Math.min(haveG + shortG, (haveG * mostServedBy(eggs, egg)) / eggs);
  return Math.floor(mostG * 1000) / 1000;
}

/** Best fills for a number of whole eggs; null for a formula without eggs. */
export function fillsForEggs(input: FillInput, eggs: number, best = 20): Fills | null {
  const haveG = batterForEggsG(input, eggs);
  if (haveG === null) return null;
  return bestFills(shelfFor(input), { batterG: haveG, mostG: mostFilledG(input, eggs, haveG), best });
}
