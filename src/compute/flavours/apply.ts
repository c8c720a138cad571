/**
 * Flavours on a base formula, in the order they are named. A flavour that keeps the batter's weight is scaled
 * back to what it started from; one that grows raises the batter that every tin is given by the same share.
 */
import type { Flavour } from '../../domain/flavour.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Formula, Recipe } from '../../domain/recipe.ts';
import { adjusted } from './adjust.ts';
import { balanceWarnings } from './balance.ts';

export interface FlavouredFormula {
  flavourIds: string[];
  /** Weights in g, per base formula as written. */
  formula: Formula;
  /** Batter a tin is given over what the base recipe would give it. 1 when every flavour keeps the weight. */
  growth: number;
  warnings: Warning[];
}

const totalG = (formula: Formula): number => formula.reduce((sum, line) => sum + line.grams, 0);

function scaled(formula: Formula, by: number): Formula {
  return formula.map((line) => ({ ...line, grams: line.grams * by }));
}

function afterOne(formula: Formula, flavour: Flavour): Formula {
  const changed = flavour.adjustments.reduce(adjusted, formula);
  return flavour.batter === 'kept' ? scaled(changed, totalG(formula) / totalG(changed)) : changed;
}

function suitsRecipe(flavour: Flavour, recipe: Recipe): boolean {
  return flavour.suits.recipeIds.includes(recipe.id) || flavour.suits.methods.includes(recipe.method);
}

function unsuited(recipe: Recipe, flavours: Flavour[]): Warning[] {
  return flavours
    .filter((flavour) => !suitsRecipe(flavour, recipe))
    .map((flavour) => ({
      code: 'flavour-untried',
      message: `${flavour.name} was not worked out for ${recipe.name}: bake one small tin first.`,
    }));
}

/**
 * Applies flavours in order to a recipe's formula.
 * @returns the new formula in g, the growth of the batter as a ratio, and named balance warnings.
 * @example applyFlavours(sponge, []).growth // 1
 */
export function applyFlavours(recipe: Recipe, flavours: Flavour[]): FlavouredFormula {
  const formula = flavours.reduce(afterOne, recipe.formula);
  return {
    flavourIds: flavours.map((flavour) => flavour.id),
    formula,
    growth: totalG(formula) / totalG(recipe.formula),
    warnings: [...unsuited(recipe, flavours), ...balanceWarnings(formula, recipe.method)],
  };
}
