/**
 * What a sponge loses in the oven and how long it keeps: the recipe's own word, the log's weighings and the kitchen's
 * times, else common practice, no source. Weigh a batter and its cake, and write them into the bake log or
 * `baking_loss` into the recipe; `keeps` in the recipe, or `times: cake_keeps` in kitchen.yaml, is how long it keeps.
 */

import type { Recipe } from '../../domain/recipe.ts';
import { DAY_MIN, type KitchenTimes } from '../../domain/times.ts';
import { waterLoss } from '../bake/water-loss.ts';

export interface SpongeUsual {
  waterLossShare: number;
  /** Whose word the figure is: the recipe's, the log's, or the method's usual one. */
  lossSource: 'own' | 'log' | 'method';
}

/** The recipe's own figure and the log's, else that of its method. */
export function spongeUsual(recipe: Pick<Recipe, 'method' | 'bakingLossShare' | 'weighings'>): SpongeUsual {
  const loss = waterLoss(recipe);
  return {
    waterLossShare: loss.share,
    lossSource: loss.bakes > 0 ? 'log' : loss.prior.source,
  };
}

/** Whole days that the sponge keeps from the oven: the recipe's own word, else the kitchen's for its method. */
export const spongeKeepsDays = (
  { method, keepsDays }: Pick<Recipe, 'method' | 'keepsDays'>,
  { cakeKeepsMin }: Pick<KitchenTimes, 'cakeKeepsMin'>,
): number => keepsDays ?? Math.floor(cakeKeepsMin[method] / DAY_MIN);
