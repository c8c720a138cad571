/**
 * The formula that is really weighed: a recipe, its flavours in order, and last the kitchen's altitude, which
 * applies to everything baked there and says so in a warning of its own.
 */
import type { Flavour } from '../../domain/flavour.ts';
import type { Ingredient, Role } from '../../domain/ingredient.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Formula, Recipe } from '../../domain/recipe.ts';
import { altitudeFlavour, altitudeShares } from './altitude.ts';
import { applyFlavours, type FlavouredFormula } from './apply.ts';
import { selfRaisingSplits } from './self-raising.ts';

export interface FlavourSetting {
  /** Height above the sea, m; null when the kitchen does not say. */
  altitudeM: number | null;
  ingredients: readonly Ingredient[];
}

const signed = (share: number): string => `${share < 0 ? '−' : '+'}${Math.round(Math.abs(share) * 100)} %`;

function changed(formula: Formula, role: Role, name: string, share: number): string[] {
  return formula.some((line) => line.role === role && line.grams > 0) ? [`${name} ${signed(share)}`] : [];
}

function altitudeWarning(metres: number, formula: Formula): Warning[] {
  const shares = altitudeShares(metres);
  if (shares === null) return [];
  const parts = [
    ...changed(formula, 'raising', 'raising agents', shares.powder),
    ...changed(formula, 'sugar', 'sugar', shares.sugar),
    ...changed(formula, 'liquid', 'liquid', shares.liquid),
  ];
  const message = `Adjusted for ${Math.round(metres)} m above the sea: ${parts.join(', ')}. Bake one small tin first.`;
  return [{ code: 'altitude-adjusted', message }];
}

/**
 * Flavours in order, then the altitude. `flavourIds` names the flavours only; `growth` and the weights hold both.
 * @example formulaInKitchen(sponge, [], { altitudeM: null, ingredients }).formula // the recipe's own
 */
export function formulaInKitchen(
  recipe: Recipe,
  flavours: readonly Flavour[],
  { altitudeM, ingredients }: FlavourSetting,
): FlavouredFormula {
  const height = altitudeM === null ? null : altitudeFlavour(altitudeM, selfRaisingSplits(ingredients));
  if (altitudeM === null || height === null) return applyFlavours(recipe, [...flavours]);
  const applied = applyFlavours(recipe, [...flavours, height]);
  return {
    ...applied,
    flavourIds: flavours.map(({ id }) => id),
    warnings: [...applied.warnings, ...altitudeWarning(altitudeM, applied.formula)],
  };
}
