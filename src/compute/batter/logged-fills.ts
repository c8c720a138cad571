/**
 * Which bakes of the log tell how far a recipe's batter goes? Those of the plain recipe (a flavour may add batter),
 * without a core (it takes up room), with the height measured, and not noted among the proven bakes already (same
 * day, same tin). Fewer than three say nothing: house rule.
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import type { LoggedFill, Recipe } from '../../domain/recipe.ts';
import { weighingsOf } from '../bake/water-loss.ts';

export const LEAST_LOGGED_FILLS = 3;

function isProven({ date, tin }: BakeLogRow, { provenBakes }: Pick<Recipe, 'provenBakes'>): boolean {
  return provenBakes.some(
    (bake) => bake.date === date && bake.tins.some((filled) => filled.tin.id === tin.id),
  );
}

/** The bakes, in the log's order. Rows must carry only heights that were measured. */
export function measuredFills(
  rows: readonly BakeLogRow[],
  recipe: Pick<Recipe, 'id' | 'provenBakes'>,
): LoggedFill[] {
  return rows.flatMap((row): LoggedFill[] => {
    const { recipeId, flavourIds, core, finishedHeightMm, date, tin, count, batterG } = row;
    const tells =
      recipeId === recipe.id && flavourIds.length === 0 && core === 'none' && !isProven(row, recipe);
    if (!tells || finishedHeightMm === undefined) return [];
    return [{ date, tin, count, finishedHeightMm, batterG: batterG * count }];
  });
}

/** A recipe with what the log says of its yield, where it has enough to say, and of its weight when baked. */
function withLog(recipe: Recipe, rows: readonly BakeLogRow[]): Recipe {
  const fills = measuredFills(rows, recipe);
  const weighings = weighingsOf(rows.filter(({ recipeId }) => recipeId === recipe.id));
  return {
    ...recipe,
    ...(fills.length < LEAST_LOGGED_FILLS ? {} : { loggedFills: fills }),
    ...(weighings.length === 0 ? {} : { weighings }),
  };
}

/** Recipes with what the log says of them. */
export const recipesWithLog = (recipes: readonly Recipe[], rows: readonly BakeLogRow[]): Recipe[] =>
  recipes.map((recipe) => withLog(recipe, rows));
