/**
 * Which charts are there? Every recipe plain, every flavour on the recipes it names, and the combinations that
 * `printables` asks for; all at the kitchen's altitude.
 */
import { formulaInKitchen } from '../compute/flavours/formula-in-kitchen.ts';
import type { Content } from '../domain/content.ts';
import type { Flavour } from '../domain/flavour.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { ChartInput } from './chart-mixes.ts';
import { type RecipeBakes, recipeBakes } from './recipe-bakes.ts';

/** What charts are made from; flavours, altitude and printables may be left out for a plain kitchen. */
export type ChartContent = Pick<Content, 'kitchen' | 'ingredients' | 'recipes'> &
  Partial<Pick<Content, 'flavours' | 'altitudeM' | 'printables' | 'bakeLog'>>;

export interface Combination {
  recipe: Recipe;
  flavours: Flavour[];
}

/** The input of one chart. */
export function chartInput(
  { kitchen, ingredients, altitudeM = null }: ChartContent,
  recipe: Recipe,
  flavours: readonly Flavour[],
  bakes?: RecipeBakes,
): ChartInput {
  const base = { kitchen, recipe, ingredients, ...(bakes === undefined ? {} : { bakes }) };
  const applied = formulaInKitchen(recipe, flavours, { altitudeM, ingredients });
  if (flavours.length === 0 && applied.warnings.every(({ code }) => code !== 'altitude-adjusted'))
    return base;
  const named = flavours.map(({ id, name }) => ({ id, name }));
  return { ...base, flavours: { ...applied, named } };
}

const sameIds = (one: readonly { id: string }[], other: readonly { id: string }[]): boolean =>
  one.length === other.length && one.every(({ id }, at) => id === other[at]?.id);

/** Combinations that the kitchen asks for by name, for a recipe. */
function askedFor(recipe: Recipe, { flavours = [], printables }: ChartContent): Flavour[][] {
  return (printables ?? []).flatMap(({ flavourIds, recipeIds }) => {
    if (flavourIds === undefined || (recipeIds !== undefined && !recipeIds.includes(recipe.id))) return [];
    return [flavourIds.flatMap((id) => flavours.find((flavour) => flavour.id === id) ?? [])];
  });
}

/** Every combination that gets a chart, recipe by recipe: plain, each flavour, then what was asked for. */
export function chartCombinations(content: ChartContent): Combination[] {
  return content.recipes.flatMap((recipe) => {
    const suited = (content.flavours ?? []).filter(({ suits }) => suits.recipeIds.includes(recipe.id));
    const lists = [[], ...suited.map((flavour) => [flavour]), ...askedFor(recipe, content)];
    const distinct = lists.filter((list, at) => lists.findIndex((other) => sameIds(other, list)) === at);
    return distinct.map((flavours) => ({ recipe, flavours }));
  });
}

/** What the log taught, by the id of the recipe. */
export const bakesOfRecipes = (content: ChartContent): Map<string, RecipeBakes> =>
  new Map(content.recipes.map((recipe) => [recipe.id, recipeBakes(recipe, content)]));

/** The inputs of every chart, in the order of the combinations. */
export function chartInputs(
  content: ChartContent,
  bakes: ReadonlyMap<string, RecipeBakes> = bakesOfRecipes(content),
): ChartInput[] {
  return chartCombinations(content).map(({ recipe, flavours }) =>
    chartInput(content, recipe, flavours, bakes.get(recipe.id)),
  );
}
