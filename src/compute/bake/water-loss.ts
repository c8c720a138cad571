/**
 * How much of the batter leaves the oven as steam? 1 − baked mass ÷ batter, a running mean of the log's weighings
 * that starts from what the recipe says of itself, else from the trade's figure for its method, on the careful side
 * (common practice, no source): sure to 1.5 and 1.8 %. One weighing scatters by about 1.5 % (house rule).
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import type { MixingMethod, Recipe, Weighing } from '../../domain/recipe.ts';

export interface WaterLoss {
  share: number;
  /** One standard deviation. */
  sd: number;
  /** Bakes of the log that were weighed. */
  bakes: number;
  /** What they say, in order. */
  weighed: Weighing[];
  /** What it starts from, and whose word that is. */
  prior: { share: number; sd: number; source: 'own' | 'method' };
}

export const WEIGHING_SD = 0.015;
const METHOD_SD = 0.018;

/** Share of the batter's weight that leaves as steam. */
const BY_METHOD: Record<MixingMethod, number> = {
  creamed: 0.1,
  'all-in-one': 0.1,
  whisked: 0.12,
  oil: 0.09,
  melted: 0.08,
  'rich fruit': 0.06,
  angel: 0.12,
};

/** The rows in which a cake was weighed, one tin's batter and cake each. */
export const weighingsOf = (rows: readonly BakeLogRow[]): Weighing[] =>
  rows.flatMap(({ batterG, massOutG }) => (massOutG === undefined ? [] : [{ batterG, massOutG }]));

/** Share of the batter that leaves as steam. */
export function waterLoss(recipe: Pick<Recipe, 'method' | 'bakingLossShare' | 'weighings'>): WaterLoss {
  const { method, bakingLossShare: own, weighings: weighed = [] } = recipe;
  const prior: WaterLoss['prior'] =
    own === undefined
      ? { share: BY_METHOD[method], sd: METHOD_SD, source: 'method' }
      : { share: own, sd: WEIGHING_SD, source: 'own' };
  const priorWeight = 1 / (prior.sd * prior.sd);
  const weight = 1 / (WEIGHING_SD * WEIGHING_SD);
  const total = priorWeight + weighed.length * weight;
  const sum = weighed.reduce(
    (all, { batterG, massOutG }) => all + (1 - massOutG / batterG) * weight,
    prior.share * priorWeight,
  );
  return {
    share: quantiseRatio(sum / total),
    sd: quantiseRatio(1 / Math.sqrt(total)),
    bakes: weighed.length,
    weighed,
    prior,
  };
}
