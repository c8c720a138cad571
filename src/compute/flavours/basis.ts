import type { Basis } from '../../domain/flavour.ts';
import type { Formula, FormulaLine } from '../../domain/recipe.ts';

/** Whether a line counts towards a basis. Everything counts towards the whole batter. */
export function countsTowards(line: FormulaLine, basis: Basis): boolean {
  if ('role' in basis) return line.role === basis.role;
  if ('ingredientId' in basis) return line.ingredientId === basis.ingredientId;
  return true;
}

/** Weight of a basis in a formula, g. */
export function basisG(formula: Formula, basis: Basis): number {
  return formula.reduce((sum, line) => sum + (countsTowards(line, basis) ? line.grams : 0), 0);
}
