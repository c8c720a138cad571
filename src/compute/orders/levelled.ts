/**
 * What is cut off the top of a bake to make it level, and what that leaves: thinner layers, and offcuts that have been
 * paid for and are not in the cake that is sold.
 *
 *   layer height = bakes × (baked height − cut) ÷ layers; offcuts = cut ÷ baked height of what the sponge weighs
 *
 * A dome is taken for as dense and as wide as the cake below it: on the high side, for a dome narrows.
 */
import { quantiseG, quantiseMm, quantiseRatio } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import type { Tin } from '../../domain/tin.ts';

export interface Levelled {
  /** Off every bake. */
  cutMm: number;
  /** Of all bakes of one cake, before anything goes between. */
  heightMm: number;
  layerMm: number;
  /** From one cake. */
  offcutG: number;
  /** Share of the sponge that stays in the cake. */
  keptShare: number;
}

/** Half spheres are cut flat at the rim, which their tin does. */
export const levelMm = (
  { levelMm: cut = 0 }: Pick<Recipe, 'levelMm'>,
  { shape }: Pick<Tin, 'shape'>,
): number => (shape.kind === 'dome' ? 0 : cut);

interface Baked {
  bakes: number;
  /** Of each bake. */
  heightMm: number;
  layers: number;
  /** Of one whole cake, baked. */
  spongeG: number;
}

/**
 * The sponge of one cake once it is level.
 * @example 3 mm off 65 mm in three layers → layers of 20.667 mm, 4.6 % of the sponge in offcuts
 */
export function levelled({ bakes, heightMm, layers, spongeG }: Baked, cutMm: number): Levelled {
  const share = cutMm / heightMm;
  return {
    cutMm,
    heightMm: quantiseMm(bakes * (heightMm - cutMm)),
    layerMm: quantiseMm((bakes * (heightMm - cutMm)) / layers),
    offcutG: quantiseG(spongeG * share),
    keptShare: quantiseRatio(1 - share),
  };
}
