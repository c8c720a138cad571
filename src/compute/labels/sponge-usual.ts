/**
 * What a sponge loses in the oven and how long it keeps, where its recipe does not say. Both are common practice,
 * no source, and on the careful side: weigh a batter and its cake once, and write `baking_loss` and `keeps` in the
 * recipe.
 */
import type { MixingMethod, Recipe } from '../../domain/recipe.ts';

/** Share of the batter's weight that leaves as steam. */
const LOSS: Record<MixingMethod, number> = {
  creamed: 0.1,
  'all-in-one': 0.1,
  whisked: 0.12,
  oil: 0.09,
  melted: 0.08,
  'rich fruit': 0.06,
  angel: 0.12,
};

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
  /** Whether the figure is the recipe's own or the method's usual one. */
  lossSource: 'own' | 'method';
  keepsSource: 'own' | 'method';
}

/** The recipe's own figures, else those of its method. */
export function spongeUsual({
  method,
  bakingLossShare,
  keepsDays,
}: Pick<Recipe, 'method' | 'bakingLossShare' | 'keepsDays'>): SpongeUsual {
  return {
    waterLossShare: bakingLossShare ?? LOSS[method],
    keepsDays: keepsDays ?? KEEPS[method],
    lossSource: bakingLossShare === undefined ? 'method' : 'own',
    keepsSource: keepsDays === undefined ? 'method' : 'own',
  };
}
