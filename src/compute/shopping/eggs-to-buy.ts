/**
 * Eggs are bought whole: each gives a yolk and a white. Whole eggs, and for what is separated as many as the more
 * wanted half asks for; the other halves are left over. Yolks or whites that are bought in cartons of their own
 * are left to their packs.
 */
import type { Ingredient } from '../../domain/ingredient.ts';
import type { IngredientUse } from '../orders/planned-order.types.ts';

export interface EggNeed {
  /** Whole eggs to crack, separated ones included. */
  eggs: number;
  spareYolks: number;
  spareWhites: number;
  /** Uses that these eggs answer. */
  ingredientIds: string[];
}

/** What the eggs of some uses come to; null when no whole egg is called for. */
export function eggNeed(uses: readonly IngredientUse[], shelf: readonly Ingredient[]): EggNeed | null {
  const part = (id: string) => shelf.find((one) => one.id === id);
  const counted = uses.filter(({ ingredientId, eggs }) => {
    const item = part(ingredientId);
    const fromEggs = item?.eggPart === 'egg' || (item?.eggPart !== undefined && item.packs === undefined);
    return eggs !== null && eggs > 0 && fromEggs;
  });
  if (counted.length === 0) return null;
  const count = (which: Ingredient['eggPart']): number =>
    counted
      .filter(({ ingredientId }) => part(ingredientId)?.eggPart === which)
      .reduce((sum, { eggs }) => sum + (eggs ?? 0), 0);
  const [yolks, whites] = [count('yolk'), count('white')];
  const separated = Math.max(yolks, whites);
  return {
    eggs: count('egg') + separated,
    spareYolks: separated - yolks,
    spareWhites: separated - whites,
    ingredientIds: counted.map(({ ingredientId }) => ingredientId),
  };
}
