/** The mixes behind a chart's rows: every owned tin alone, and all of a kind together, smallest tin first. */

import { type AppliedFlavours, type Mix, planMix } from '../compute/mixes/plan-mix.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Formula, Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import { bySize } from './by-size.ts';
import type { Named } from './figure.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

/** What a chart is made from. */
export interface ChartInput {
  kitchen: Kitchen;
  recipe: Recipe;
  ingredients: readonly Ingredient[];
  /** Flavours with the formula they make; the plain recipe when left out. */
  flavours?: AppliedFlavours & { named: Named[]; formula: Formula };
  /** What the log taught about the recipe; no bake times when left out. */
  bakes?: RecipeBakes;
}

export interface ChartMix {
  /** 'round-6', 'round-6-x2'. */
  id: string;
  tin: Tin;
  count: number;
  mix: Mix;
}

export const chartFormula = ({ recipe, flavours }: ChartInput): Formula =>
  flavours?.formula ?? recipe.formula;

/** The reader refuses recipes without proven bakes or weights, so a refusal here is a bug. */
function planned(input: ChartInput, tin: Tin, count: number): Mix {
  const { kitchen, recipe, flavours } = input;
  const asked = { recipe, formula: chartFormula(input), asks: [{ tin, count }], kitchen };
  const mix = planMix(flavours === undefined ? asked : { ...asked, flavours: { ...flavours, warnings: [] } });
  if (!mix.ok) throw new Error(mix.problems.map((problem) => problem.message).join(' '));
  return mix.value;
}

/** Mixes in the order of the chart's rows; what flavours warn of stands once on the chart, not in each. */
export function chartMixes(input: ChartInput): ChartMix[] {
  const owned = input.kitchen.tins.filter((tin) => tin.owned > 0).sort(bySize);
  return owned.flatMap((tin) => {
    const one = { id: tin.id, tin, count: 1, mix: planned(input, tin, 1) };
    if (tin.owned < 2) return [one];
    return [
      one,
      { id: `${tin.id}-x${tin.owned}`, tin, count: tin.owned, mix: planned(input, tin, tin.owned) },
    ];
  });
}
