/**
 * How heavy is a millilitre of finished cake? The recipe's proven bakes answer: batter ÷ finished volume, by
 * least squares through the origin, ρ = Σ m·V ÷ Σ V², so that a bake in big tins counts for more. Valid for
 * finished heights near those proven. Rule: common practice, no source.
 */
import { quantiseG, quantiseMl, quantiseRatio } from '../../domain/quantise.ts';
import type { ProvenBake, Recipe } from '../../domain/recipe.ts';
import { volumeToHeightMl } from '../shapes/index.ts';

export interface ProvenYield {
  bake: ProvenBake;
  /** Finished volume of all its tins, mL. */
  volumeMl: number;
  /** This bake alone, g/mL. */
  gPerMl: number;
  /** Its batter against what the joint density foretells, as a share: 0.02 is 2 % more. */
  residual: number;
}

export interface YieldDensity {
  /** Batter per millilitre of finished cake, g/mL. */
  gPerMl: number;
  bakes: ProvenYield[];
  /** Largest residual, as a share; 0 for a single bake. */
  spread: number;
}

/** Finished volume of a proven bake's tins, mL. */
export function provenVolumeMl(bake: ProvenBake): number {
  return quantiseMl(
    bake.tins.reduce((sum, { tin, count }) => sum + count * volumeToHeightMl(tin, bake.finishedHeightMm), 0),
  );
}

/**
 * Yield density of a recipe in g/mL; null when it has no proven bake.
 * @example yieldDensity(sponge)?.gPerMl // 0.431
 */
export function yieldDensity(recipe: Pick<Recipe, 'provenBakes'>): YieldDensity | null {
  if (recipe.provenBakes.length === 0) return null;
  const seen = recipe.provenBakes.map((bake) => ({ bake, volumeMl: provenVolumeMl(bake) }));
  const crossed = seen.reduce((sum, { bake, volumeMl }) => sum + bake.batterG * volumeMl, 0);
  const squared = seen.reduce((sum, { volumeMl }) => sum + volumeMl * volumeMl, 0);
  const gPerMl = quantiseRatio(crossed / squared);
  const bakes = seen.map(({ bake, volumeMl }) => ({
    bake,
    volumeMl,
    gPerMl: quantiseRatio(bake.batterG / volumeMl),
    residual: quantiseRatio(bake.batterG / (gPerMl * volumeMl) - 1),
  }));
  const spread = bakes.length === 1 ? 0 : Math.max(...bakes.map(({ residual }) => Math.abs(residual)));
  return { gPerMl, bakes, spread };
}

/** Batter for a finished volume in mL, g, unrounded but for the last thousandth. */
export function batterG(gPerMl: number, finishedVolumeMl: number): number {
  return quantiseG(gPerMl * finishedVolumeMl);
}
