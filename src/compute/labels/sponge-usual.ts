/**
 * What a sponge loses in the oven and how long it keeps: the recipe's own word and the log's weighings, else common
 * practice, no source, and on the careful side. Weigh a batter and its cake, and write them into the bake log or
 * `baking_loss` into the recipe.
 */

import type { MixingMethod, Recipe } from '../../domain/recipe.ts';
import { waterLoss } from '../bake/water-loss.ts';

/** Days in a closed box at cool room temperature, uncut. */
const KEEPS: Record<MixingMethod, number> = {
  creamed: 4,
  'all-in-one': 4,
  whisked: 2,
  oil: 4,
  melted: 7,
  'rich fruit': 90,
  angel: 3,
};

export interface SpongeUsual {
  waterLossShare: number;
  keepsDays: number;
  /** Whose word the figure is: the recipe's, the log's, or the method's usual one. */
  lossSource: 'own' | 'log' | 'method';
  keepsSource: 'own' | 'method';
}

/** The recipe's own figures and the log's, else those of its method. */
export function spongeUsual(
  recipe: Pick<Recipe, 'method' | 'bakingLossShare' | 'keepsDays' | 'weighings'>,
): SpongeUsual {
  const { method, keepsDays } = recipe;
  const loss = waterLoss(recipe);
  return {
    waterLossShare: loss.share,
    keepsDays: keepsDays ?? KEEPS[method],
    lossSource: loss.bakes > 0 ? 'log' : loss.prior.source,
    keepsSource: keepsDays === undefined ? 'method' : 'own',
  };
}
