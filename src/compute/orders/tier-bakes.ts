/**
 * In how many bakes does a tall cake come out of its tin? One where the tin takes the height in one go; else as few
 * bakes of one height as stay within what the tin and the recipe's rise allow. They are stacked with the filling.
 *
 *   bakes = ⌈height ÷ (depth + rise above the rim)⌉; layers: as thick as the recipe's, the same from every bake
 *
 * A dome, a loaf and a tin known only by its water are never stacked on their own kind.
 */
import type { TierAsk } from '../../domain/order.ts';
import { quantiseMm, quantiseRatio } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import type { Shape } from '../../domain/shape.ts';
import type { Tin } from '../../domain/tin.ts';

export interface TierBakes {
  bakes: number;
  /** Height of each, mm; undefined: the recipe's own, or what the tin takes of it. */
  heightMm: number | undefined;
}

/** More would be a column: then the height is refused. */
export const MOST_BAKES = 6;

const NEVER_STACKED: readonly Shape['kind'][] = ['dome', 'loaf', 'measured'];

/** Whether cakes of this tin may be stacked into one taller cake. */
export const stacksOnItself = ({ shape }: Pick<Tin, 'shape'>): boolean => !NEVER_STACKED.includes(shape.kind);

type Ask = Pick<TierAsk, 'finishedHeightMm' | 'bakes'>;
type HeightRule = Pick<Recipe, 'finishedHeightMm' | 'allowedRiseMm'>;

function fewestBakes({ finishedHeightMm }: Ask, tin: Tin, { allowedRiseMm }: HeightRule): number {
  if (finishedHeightMm === undefined || !stacksOnItself(tin)) return 1;
  const bakes = Math.ceil(quantiseRatio(finishedHeightMm / (tin.depthMm + allowedRiseMm)));
  return bakes > MOST_BAKES ? 1 : Math.max(1, bakes);
}

/**
 * The bakes of a tier's cake.
 * @example 120 mm from a tin of 76.2 mm whose recipe may stand 5 mm above the rim → 2 bakes of 60 mm
 */
export function tierBakes(ask: Ask, tin: Tin, recipe: HeightRule): TierBakes {
  const bakes = ask.bakes ?? fewestBakes(ask, tin, recipe);
  if (bakes === 1) return { bakes, heightMm: ask.finishedHeightMm };
  return { bakes, heightMm: quantiseMm((ask.finishedHeightMm ?? recipe.finishedHeightMm) / bakes) };
}

/** Layers of the whole cake: as asked, else as thick as the recipe's and the same from every bake. */
export function tierLayers(
  ask: Pick<TierAsk, 'layers'>,
  { bakes, heightMm }: TierBakes,
  recipe: Pick<Recipe, 'layers' | 'finishedHeightMm'>,
): number {
  if (ask.layers !== undefined || bakes === 1 || heightMm === undefined) return ask.layers ?? recipe.layers;
  const thickMm = recipe.finishedHeightMm / recipe.layers;
  return bakes * Math.max(1, Math.round(quantiseRatio(heightMm / thickMm)));
}
