/** Which tiers are mixed together? Those of one recipe with the same flavours in the same order. */
import type { Flavour } from '../../domain/flavour.ts';
import type { TierAsk } from '../../domain/order.ts';
import type { Problem } from '../../domain/problem.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { formulaInKitchen } from '../flavours/formula-in-kitchen.ts';
import { planMix, type TinAsk } from '../mixes/plan-mix.ts';
import { named, type OrderContent } from './order-content.ts';
import type { PlannedMix } from './planned-order.types.ts';

/** The same for tiers whose batter can be made together. */
export const batterKey = ({ recipeId, flavourIds }: Pick<TierAsk, 'recipeId' | 'flavourIds'>): string =>
  [recipeId, ...flavourIds].join('+');

const asked = (tier: TierAsk, { kitchen }: OrderContent): TinAsk => ({
  tin: named(kitchen.tins, tier.tinId),
  count: tier.count,
  ...(tier.finishedHeightMm === undefined ? {} : { heightMm: tier.finishedHeightMm }),
});

interface Batter {
  recipe: Recipe;
  flavours: Flavour[];
}

/** One mix for tiers of one batter; `tierAt` tells for each of its tins which tier that is. */
export function mixOf(
  { recipe, flavours }: Batter,
  tiers: readonly TierAsk[],
  tierAt: number[],
  content: OrderContent,
): Result<PlannedMix> {
  const applied = formulaInKitchen(recipe, flavours, content);
  const plain = flavours.length === 0 && applied.warnings.length === 0;
  const mix = planMix({
    recipe,
    formula: applied.formula,
    asks: tiers.map((tier) => asked(tier, content)),
    kitchen: content.kitchen,
    ...(plain ? {} : { flavours: applied }),
  });
  if (!mix.ok) return mix;
  return succeed({ recipe, flavours, formula: applied.formula, mix: mix.value, tierAt });
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
