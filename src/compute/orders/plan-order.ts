/**
 * From 'three tiers for sixty, Saturday at two' to mixes, bakes, finishes and weights.
 *
 *   tiers of one batter are one mix (loads of whole eggs); each finish is summed over its tiers and weighed once;
 *   weight of a cake = batter × (1 − what leaves as steam) + all that is on it
 */
import { ovenNamed } from '../../domain/kitchen.ts';
import type { Order, TierAsk } from '../../domain/order.ts';
import type { Warning } from '../../domain/problem.ts';
import { quantiseG, quantiseMm } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { type Result, succeed } from '../../domain/result.ts';
import type { Tin } from '../../domain/tin.ts';
import type { BakeAdvice } from '../bake/index.ts';
import { finishClashes } from '../finishes/clashes.ts';
import { spongeUsual } from '../labels/sponge-usual.ts';
import { tinPortions } from '../portions/tin-portions.ts';
import { usesOf } from './ingredient-uses.ts';
import { levelled, levelMm } from './levelled.ts';
import { named, type OrderContent } from './order-content.ts';
import { finishesOf } from './order-finishes.ts';
import { mixesOf } from './order-mixes.ts';
import { plannedDummies } from './planned-dummy.ts';
import type {
  PlannedDummy,
  PlannedFinish,
  PlannedMix,
  PlannedOrder,
  PlannedTier,
} from './planned-order.types.ts';
import { plannedSmall } from './planned-small.ts';
import { type TierBakes, tierBakes, tierLayers } from './tier-bakes.ts';
import { finishedTier } from './tier-finishes.ts';

export type * from './planned-order.types.ts';

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

function clashes(ask: TierAsk, { finishes }: OrderContent): Warning[] {
  const used = ask.finishes.map(({ finishId, use }) => {
    const finish = named(finishes, finishId);
    return { ...finish, use: { [use]: finish.use[use] } };
  });
  return finishClashes(used);
}

/** The way this kitchen bakes it: with the oven's core where that is worth it, else with its band where the edge needs it. */
function adviceFor(
  ask: TierAsk,
  tin: Tin,
  heightMm: number,
  content: OrderContent,
): { bake: BakeAdvice | null; withCore: boolean; withBand: boolean } {
  const recipe = named(content.recipes, ask.recipeId);
  const found = content.guidance(recipe, tin, heightMm);
  const { core, band } = ovenNamed(content.kitchen, recipe.ovenId);
  const cored = core !== 'none' && found?.coreIsWorthIt === true ? found.withCore : null;
  return {
    bake: cored ?? found?.plain ?? null,
    withCore: cored !== null,
    withBand: cored === null && band && found?.edgeNeedsCare === true,
  };
}

function portionsOf(order: Order, tin: Tin, { portionSizes }: OrderContent): [number | null, number | null] {
  const size = portionSizes.find(({ id }) => id === (order.portions?.size ?? 'dessert'));
  const cut = size === undefined ? null : tinPortions(tin, size);
  return [cut?.rows.good ?? null, cut?.rings?.total ?? null];
}

/** Which mix a tier's batter comes from, and which of its tins that is. */
function placeIn(mixes: readonly PlannedMix[], at: number): [number, number] {
  const mixAt = mixes.findIndex(({ tierAt }) => tierAt.includes(at));
  return [mixAt, mixes[mixAt]?.tierAt.indexOf(at) ?? -1];
}

const inMm = (lengthMm: number): string => `${Math.round(lengthMm)} mm`;

/** A cake that its tin does not take in one go: what is done instead, unless the order itself says so. */
function bakesWarning(ask: TierAsk, tin: Tin, recipe: Recipe, { bakes, heightMm }: TierBakes): Warning[] {
  if (bakes === 1 || heightMm === undefined || ask.bakes !== undefined) return [];
  const most = inMm(tin.depthMm + recipe.allowedRiseMm);
  const message = `${tin.name}: ${inMm(bakes * heightMm)} is more than it bakes in one go (${most}), so ${bakes} bakes of ${inMm(heightMm)} make one cake.`;
  return [{ code: 'several-bakes', message }];
}

function plannedTier(
  order: Order,
  ask: TierAsk,
  at: number,
  mixes: readonly PlannedMix[],
  content: OrderContent,
): PlannedTier {
  const [mixAt, mixTinAt] = placeIn(mixes, at);
  const planned = mixes[mixAt];
  const mixTin = planned?.mix.tins[mixTinAt];
  if (planned === undefined || mixTin === undefined) throw new Error(`Tier ${at + 1} has no batter.`);
  if (ask.small !== undefined) return plannedSmall(ask, ask.small, at, [mixAt, planned], content);
  const { recipe, flavours } = planned;
  const { tin, finishedHeightMm: bakeHeightMm, receivesG } = mixTin;
  const found = tierBakes(ask, tin, recipe);
  const { bakes } = found;
  const layers = tierLayers(ask, found, recipe);
  const finishedHeightMm = quantiseMm(bakes * bakeHeightMm);
  const spongeG = bakes * receivesG * (1 - spongeUsual(recipe).waterLossShare);
  const level = levelled({ bakes, heightMm: bakeHeightMm, layers, spongeG }, levelMm(recipe, tin));
  const cake = { tin, count: ask.count, layers, heightMm: level.heightMm };
  const finished = finishedTier(ask, cake, content.finishes, content.finishing);
  const onCakesG = total(finished.finishes.map(({ amount }) => amount.neededG));
  const [portionsEach, inRings] = portionsOf(order, tin, content);
  return {
    ...{ at, ask, tin, smallTins: null, recipe, flavours, count: ask.count, layers, mixAt, mixTinAt },
    ...{ finishedHeightMm, bakes, bakeHeightMm, level, receivesG, portionsEach, inRings },
    ...finished,
    weightGEach: quantiseG(spongeG - level.offcutG + onCakesG / ask.count),
    ...adviceFor(ask, tin, bakeHeightMm, content),
    warnings: [
      ...mixTin.warnings.filter(({ code }) => code !== 'second-bake'),
      ...bakesWarning(ask, tin, recipe, found),
      ...clashes(ask, content),
    ],
  };
}

/** How often a tin is filled for the order, and what is said where that is more often than it is owned. */
function turnWarning(tiers: readonly PlannedTier[]): Warning[] {
  const [first] = tiers;
  if (first === undefined) return [];
  const { tin, smallTins } = first;
  const wanted = total(tiers.map(({ count, bakes, smallTins: small }) => small?.tins ?? count * bakes));
  if (wanted <= tin.owned) return [];
  const have = `${tin.owned} ${tin.owned === 1 ? 'tin' : 'tins'}`;
  const whole = smallTins === null && tiers.every(({ bakes }) => bakes === 1);
  const what = whole ? `${wanted} cakes from ${have}` : `filled ${wanted} times, from ${have}`;
  const message = `${tin.name}: ${what}. Bake in turns; cool and wash the tin between, and keep waiting batter cool.`;
  return [{ code: 'tin-baked-again', message }];
}

/** Tins that the order needs more often than they are owned: baked in turns. */
const turnWarnings = (tiers: readonly PlannedTier[]): Warning[] =>
  [...new Set(tiers.map(({ tin }) => tin.id))].flatMap((id) =>
    turnWarning(tiers.filter(({ tin }) => tin.id === id)),
  );

function portionWarnings({ portions }: Order, pieces: number): Warning[] {
  if (portions === undefined || pieces >= portions.wanted) return [];
  const message = `${portions.wanted} portions are wanted and these cakes cut into ${pieces}: add a cake, or settle on smaller pieces.`;
  return [{ code: 'portions-short', message }];
}

/** A colouring stands in no formula, so that nothing that is worked out from formulas can name it. */
function colourWarnings(finishes: readonly PlannedFinish[]): Warning[] {
  const names = finishes.flatMap(({ finish, colours }) =>
    colours.flatMap(({ colour }) => (colour === null ? [] : [`${finish.name}, ${colour}`])),
  );
  if (names.length === 0) return [];
  const message = `What tints it (${names.join('; ')}) is in no formula, so no label names it: write the colouring and its number on the label by hand, or give the tinted finish a file of its own.`;
  return [{ code: 'colour-not-labelled', message }];
}

const isTier = ({ ask }: PlannedTier): boolean => ask.beside === undefined;

/** Cakes that are eaten on the day: without the top tier where that is kept. */
function cutTiers({ keepsTopTier }: Order, tiers: readonly PlannedTier[]): readonly PlannedTier[] {
  const top = tiers.findLast(isTier);
  return keepsTopTier ? tiers.filter((tier) => tier !== top) : tiers;
}

function heightOf(
  { arrangement }: Order,
  tiers: readonly PlannedTier[],
  dummies: readonly PlannedDummy[],
): number {
  const stacked = arrangement === 'stacked' && (dummies.length > 0 || tiers.some(isTier));
  const standing = stacked ? [...tiers.filter(isTier), ...dummies] : tiers;
  const heights = standing.map(({ coatedHeightMm }) => coatedHeightMm);
  return quantiseMm(stacked ? total(heights) : Math.max(...heights));
}

const once = (warnings: readonly Warning[]): Warning[] =>
  warnings.filter(({ message }, at) => warnings.findIndex((other) => other.message === message) === at);

/**
 * Works an order out. Fails with every problem at once where a mix cannot be made (see planMix); what may be made
 * but should be known travels as warnings.
 */
export function planOrder(order: Order, content: OrderContent): Result<PlannedOrder> {
  const mixes = mixesOf(order.tiers, content);
  if (!mixes.ok) return mixes;
  const tiers = order.tiers.map((ask, at) => plannedTier(order, ask, at, mixes.value, content));
  const dummies = plannedDummies(order, content);
  const finishes = finishesOf(
    [...tiers, ...dummies].flatMap((covered) => covered.finishes),
    content.kitchen,
  );
  const portions = total(
    cutTiers(order, tiers).map(({ count, portionsEach }) => count * (portionsEach ?? 0)),
  );
  const tinWarnings = new Set(mixes.value.flatMap(({ mix }) => mix.tins.flatMap(({ warnings }) => warnings)));
  return succeed({
    order,
    mixes: mixes.value,
    tiers,
    dummies,
    finishes,
    uses: usesOf(mixes.value, finishes),
    portions,
    portionsOver: order.portions === undefined ? null : portions - order.portions.wanted,
    weightG: quantiseG(
      total(tiers.map(({ count, weightGEach }) => count * weightGEach)) +
        total(dummies.map(({ weightGEach }) => weightGEach)),
    ),
    heightMm: heightOf(order, tiers, dummies),
    warnings: once([
      ...turnWarnings(tiers),
      ...portionWarnings(order, portions),
      ...colourWarnings(finishes),
      ...tiers.flatMap(({ warnings }) => warnings),
      ...mixes.value.flatMap(({ mix }) => mix.warnings.filter((warning) => !tinWarnings.has(warning))),
    ]),
  });
}
