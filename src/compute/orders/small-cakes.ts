/**
 * Cakes by the piece: how much batter does each get, and in how many tins do they stand?
 *
 *   batter of one = what the order says of a case, or yield density × a cup filled to its baked height
 *   a mix takes them tin by tin: full tins, then one with the rest, so that no tin waits for another bowl
 *
 * Baked height without an asked one: the recipe's, or level with the rim. Fill limits as for any tin.
 */
import type { Kitchen } from '../../domain/kitchen.ts';
import type { SmallCakes, TierAsk } from '../../domain/order.ts';
import type { Warning } from '../../domain/problem.ts';
import { quantiseG, quantiseMl, quantiseMm } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { type Result, succeed } from '../../domain/result.ts';
import type { Tin } from '../../domain/tin.ts';
import { finishedHeight } from '../batter/finished-height.ts';
import { fillWarnings, rawFill } from '../batter/raw-fill.ts';
import { batterG } from '../batter/yield-density.ts';
import type { TinAsk } from '../mixes/plan-mix.ts';
import { heightForVolumeMm, volumeToHeightMl } from '../shapes/index.ts';
import { type SmallTin, smallTin, tinsFor } from './small-tin.ts';

/** One piece as it is filled and as it comes out. */
export interface SmallFill {
  heightMm: number;
  batterG: number;
  warnings: Warning[];
}

/** The bun tin or tin of some small cakes. Reading refuses orders that name what is not there. */
export function tinOfSmall({ tinId }: Pick<TierAsk, 'tinId'>, kitchen: Kitchen): SmallTin {
  const tin = smallTin(kitchen, tinId);
  if (tin === null) throw new Error(`There is no ${tinId}.`);
  return tin;
}

/** Small cakes may dome over the rim; what runs over it raw may not. */
const warningsFor = (cup: Tin, massG: number, heightMm: number, recipe: Recipe, gPerMl: number): Warning[] =>
  fillWarnings(cup, rawFill(cup, massG, recipe.rawDensityGPerMl, gPerMl), heightMm).filter(
    ({ code }) => code !== 'fill-high',
  );

/** One piece; fails where the asked height tops the rim by more than the recipe allows. */
export function smallFill(
  { finishedHeightMm }: Pick<TierAsk, 'finishedHeightMm'>,
  { caseG }: Pick<SmallCakes, 'caseG'>,
  cup: Tin,
  recipe: Recipe,
  gPerMl: number,
): Result<SmallFill> {
  if (caseG !== undefined) {
    const heightMm = quantiseMm(heightForVolumeMm(cup, caseG / gPerMl));
    return succeed({ heightMm, batterG: caseG, warnings: warningsFor(cup, caseG, heightMm, recipe, gPerMl) });
  }
  const height = finishedHeight(recipe, cup, finishedHeightMm);
  if (!height.ok) return height;
  const { heightMm } = height.value;
  const massG = batterG(gPerMl, quantiseMl(volumeToHeightMl(cup, heightMm)));
  return succeed({ heightMm, batterG: massG, warnings: warningsFor(cup, massG, heightMm, recipe, gPerMl) });
}

/** Small cakes as tins of a mix: the full ones, and the one with what is left over of them. */
export function smallAsks(
  tier: TierAsk,
  small: SmallCakes,
  recipe: Recipe,
  gPerMl: number,
  kitchen: Kitchen,
): Result<TinAsk[]> {
  const { cup, cups, vessel } = tinOfSmall(tier, kitchen);
  const fill = smallFill(tier, small, cup, recipe, gPerMl);
  if (!fill.ok) return fill;
  const of = (pieces: number, count: number): TinAsk => ({
    tin: vessel,
    count,
    settled: { heightMm: fill.value.heightMm, batterG: quantiseG(pieces * fill.value.batterG), pieces },
  });
  const [full, rest] = [Math.floor(tier.count / cups), tier.count % cups];
  return succeed([...(full > 0 ? [of(cups, full)] : []), ...(rest > 0 ? [of(rest, 1)] : [])]);
}

/** How often the tins of some small cakes are filled. */
export const smallTinsOf = (
  tier: Pick<TierAsk, 'tinId' | 'count'>,
  kitchen: Kitchen,
): { cup: Tin; cups: number; tins: number } => {
  const { cup, cups } = tinOfSmall(tier, kitchen);
  return { cup, cups, tins: tinsFor(tier.count, cups) };
};
