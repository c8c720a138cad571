/** What an order is planned with: the kitchen's own recipes, finishes and settings, all as values. */
import type { Content } from '../../domain/content.ts';
import type { Recipe } from '../../domain/recipe.ts';
import type { Tin } from '../../domain/tin.ts';
import type { BakeGuidance } from '../bake/index.ts';

export interface OrderContent
  extends Pick<
    Content,
    | 'kitchen'
    | 'ingredients'
    | 'recipes'
    | 'flavours'
    | 'finishes'
    | 'finishing'
    | 'altitudeM'
    | 'portionSizes'
  > {
  /** Guidance for a tin baked to a height in mm; null when the oven is too cool to bake in. */
  guidance(recipe: Recipe, tin: Tin, heightMm: number): BakeGuidance | null;
}

/** The thing of that id. Reading refuses orders that name what is not there, so that a miss is a bug. */
export function named<T extends { id: string }>(all: readonly T[], id: string): T {
  const found = all.find((one) => one.id === id);
  if (found === undefined) throw new Error(`There is no ${id}.`);
  return found;
}
