/** 'I need 60': stacks of owned tins for a number of guests, with what each takes of one recipe. */
import { cakePlan } from '../compute/finishes/cake-plan.ts';
import { formulaInKitchen } from '../compute/flavours/formula-in-kitchen.ts';
import { type Mix, planMix } from '../compute/mixes/plan-mix.ts';
import { CARD_THICKNESS_MM } from '../compute/stacks/stack-plan.ts';
import { type StackAnswer, stacksFor, type TierStack } from '../compute/stacks/stacks-for.ts';
import { tierStands } from '../compute/stacks/tier-stands.ts';
import type { Content } from '../domain/content.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { ShapeKind } from '../domain/shape.ts';
import type { Tin } from '../domain/tin.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { portionsWordsFor } from '../wording/portions/index.ts';
import { eggFigures } from './egg-figures.ts';
import { countFigure, heightFigure, totalFigure } from './figures.ts';
import type { StackAnswerView, StackChoice } from './portions.types.ts';

export type StackContent = Pick<
  Content,
  'kitchen' | 'recipes' | 'ingredients' | 'finishing' | 'altitudeM' | 'orders'
>;

/** Shapes that carry a tier or stand as one: whole, flat plans. */
const STACKED: readonly ShapeKind[] = [
  'round',
  'square',
  'rectangle',
  'hexagon',
  'octagon',
  'long-octagon',
  'oval',
  'heart',
  'petal',
];
/** A shallower tin bakes a layer, not a tier. */
const LEAST_DEPTH_MM = 50;
const MOST_TIERS = 5;

/** What a tin counts in a stack. */
export interface TierPortions {
  tin: Tin;
  portions: number;
}

export interface StackQuestion {
  wanted: number;
  keepsTopTier: boolean;
  most: number;
}

const isStacked = ({ owned, shape, depthMm }: Tin): boolean =>
  owned > 0 && STACKED.includes(shape.kind) && depthMm >= LEAST_DEPTH_MM;

/** The mix for one cake from each of these tins; null where the recipe cannot be baked so. */
export function mixOf(tins: readonly Tin[], recipe: Recipe, content: StackContent): Mix | null {
  const { formula, ...flavours } = formulaInKitchen(recipe, [], content);
  const asks = tins.map((tin) => ({ tin, count: 1 }));
  const mix = planMix({ recipe, formula, flavours, asks, kitchen: content.kitchen });
  return mix.ok ? mix.value : null;
}

/** Answers questions about stacks in one recipe; the tins are compared with one another once. */
export function stackFinder(
  tiers: readonly TierPortions[],
  recipe: Recipe,
  content: StackContent,
): (question: StackQuestion) => StackAnswer {
  const choices = tiers.filter(({ tin }) => isStacked(tin));
  const plans = choices.map(({ tin }) => cakePlan(tin));
  const stands = plans.map((upper) =>
    plans.map((lower) => upper !== null && lower !== null && tierStands(upper, lower)),
  );
  const weighed = choices.map(({ tin, portions }) => ({
    tinId: tin.id,
    portions,
    batterG: mixOf([tin], recipe, content)?.askedG ?? 0,
  }));
  return (question) =>
    stacksFor({
      ...question,
      tiers: weighed,
      stands: (upper, lower) => stands[upper]?.[lower] ?? false,
      mostTiers: MOST_TIERS,
    });
}

function stackHeightMm(mix: Mix, { finishing }: StackContent): number {
  const cakes = mix.tins.reduce((sum, tin) => sum + tin.finishedHeightMm + finishing.undercoatMm, 0);
  return quantiseMm(finishing.boardThicknessMm + cakes + (mix.tins.length - 1) * CARD_THICKNESS_MM);
}

/** A stack as it is told; null when its tins cannot be baked in that recipe. */
function stackChoice(stack: TierStack, recipe: Recipe, content: StackContent): StackChoice | null {
  const { kitchen } = content;
  const tins = stack.tinIds.flatMap((id) => kitchen.tins.find((tin) => tin.id === id) ?? []);
  const mix = mixOf(tins, recipe, content);
  if (mix === null) return null;
  const words = wordsFor(kitchen.locale);
  return {
    tiers: tins.map(({ id, name }) => ({ id, name })),
    text: portionsWordsFor(kitchen.locale).stack(tins.map(({ name }) => name)),
    portions: countFigure(stack.portions),
    over: countFigure(stack.surplus),
    batter: totalFigure(mix.batterG),
    eggsText: eggFigures(mix.eggs, mix.lines, words)?.text ?? '–',
    height: heightFigure(stackHeightMm(mix, content)),
  };
}

/** The answer for one number of guests. */
export function stackAnswer(
  wanted: number,
  { stacks, hasMore }: StackAnswer,
  recipe: Recipe,
  content: StackContent,
): StackAnswerView {
  const choices = stacks.flatMap((stack) => stackChoice(stack, recipe, content) ?? []);
  return { wanted: countFigure(wanted), choices, hasMore };
}

/** The recipe most tiers are ordered in; the first in the book while there are no orders. */
export function recipeForStacks({ recipes, orders }: StackContent): Recipe | null {
  const asked = (recipe: Recipe): number =>
    orders.flatMap(({ tiers }) => tiers).filter(({ recipeId }) => recipeId === recipe.id).length;
  return [...recipes].sort((a, b) => asked(b) - asked(a))[0] ?? null;
}
