/** Which tiers are mixed together? Those of one recipe with the same flavours in the same order. */
import type { Flavour } from '../../domain/flavour.ts';
import type { TierAsk } from '../../domain/order.ts';
import type { Problem } from '../../domain/problem.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { yieldDensity } from '../batter/yield-density.ts';
import { formulaInKitchen } from '../flavours/formula-in-kitchen.ts';
import { planMix, type TinAsk } from '../mixes/plan-mix.ts';
import { named, type OrderContent } from './order-content.ts';
import type { PlannedMix } from './planned-order.types.ts';
import { smallAsks } from './small-cakes.ts';
import { tierBakes } from './tier-bakes.ts';

/** The same for tiers whose batter can be made together. */
export const batterKey = ({ recipeId, flavourIds }: Pick<TierAsk, 'recipeId' | 'flavourIds'>): string =>
  [recipeId, ...flavourIds].join('+');

function asked(
  tier: TierAsk,
  recipe: Recipe,
  gPerMl: number | null,
  { kitchen }: OrderContent,
): Result<TinAsk[]> {
  // Without a proven bake nothing is made at all; planMix says so.
  if (tier.small !== undefined && gPerMl !== null)
    return smallAsks(tier, tier.small, recipe, gPerMl, kitchen);
  if (tier.small !== undefined) return succeed([]);
  const tin = named(kitchen.tins, tier.tinId);
  const { bakes, heightMm } = tierBakes(tier, tin, recipe);
  return succeed([{ tin, count: tier.count * bakes, ...(heightMm === undefined ? {} : { heightMm }) }]);
}

interface Batter {
  recipe: Recipe;
  flavours: Flavour[];
}

/** Batter per mL of cake with what the flavours add; null without a proven bake. */
function yieldOf(recipe: Recipe, growth: number): number | null {
  const density = yieldDensity(recipe);
  return density === null ? null : quantiseRatio(density.gPerMl * growth);
}

/** One mix for tiers of one batter; `places` are theirs in the order, given back as `tierAt` for each of its tins. */
export function mixOf(
  { recipe, flavours }: Batter,
  tiers: readonly TierAsk[],
  places: readonly number[],
  content: OrderContent,
): Result<PlannedMix> {
  const applied = formulaInKitchen(recipe, flavours, content);
  const plain = flavours.length === 0 && applied.warnings.length === 0;
  const gPerMl = yieldOf(recipe, plain ? 1 : applied.growth);
  const found = tiers.map((tier) => asked(tier, recipe, gPerMl, content));
  const wrong = found.flatMap((one) => (one.ok ? [] : one.problems));
  if (wrong.length > 0) return fail(...wrong);
  const asks = found.map((one) => (one.ok ? one.value : []));
  const tierAt = asks.flatMap((own, at) => own.map(() => places[at] ?? at));
  const mix = planMix({
    recipe,
    formula: applied.formula,
    asks: asks.flat(),
    kitchen: content.kitchen,
    ...(plain ? {} : { flavours: applied }),
  });
  if (!mix.ok) return mix;
  const { formula } = applied;
  const actsAtOnce = formula.some(
    ({ ingredientId, grams }) =>
      grams > 0 && content.ingredients.some((item) => item.id === ingredientId && item.actsAtOnce === true),
  );
  return succeed({ recipe, flavours, formula, mix: mix.value, actsAtOnce, tierAt });
}

/** The mixes of some tiers, in the order in which their batters first appear. */
export function mixesOf(tiers: readonly TierAsk[], content: OrderContent): Result<PlannedMix[]> {
  const groups = new Map<string, number[]>();
  tiers.forEach((tier, at) => {
    const key = batterKey(tier);
    groups.set(key, [...(groups.get(key) ?? []), at]);
  });
  const mixes: PlannedMix[] = [];
  const problems: Problem[] = [];
  for (const tierAt of groups.values()) {
    const own = tierAt.flatMap((at) => tiers[at] ?? []);
    const [first] = own;
    if (first === undefined) continue;
    const recipe = named(content.recipes, first.recipeId);
    const flavours = first.flavourIds.map((id) => named(content.flavours, id));
    const mix = mixOf({ recipe, flavours }, own, tierAt, content);
    if (mix.ok) mixes.push(mix.value);
    else problems.push(...mix.problems);
  }
  return problems.length > 0 ? fail(...problems) : succeed(mixes);
}
