/** The planner's answers: the plan of the tins asked for, fills for a number of eggs, stacks for a number of portions. */
import { tinPortions } from '../compute/portions/tin-portions.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import { type Result, succeed } from '../domain/result.ts';
import { chartInput } from '../views/chart-inputs.ts';
import { type EggRung, eggRung } from '../views/egg-ladder.ts';
import type { Figure } from '../views/figure.ts';
import { answerIn } from '../views/in-ounces.ts';
import { type MixJson, mixJson } from '../views/mix-json.ts';
import { type Planned, plan } from '../views/plan.ts';
import type { PlanView } from '../views/plan.types.ts';
import { type PlanCost, planCost } from '../views/plan-cost.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import type { StackAnswerView } from '../views/portions.types.ts';
import { type RecipeBakes, recipeBakes } from '../views/recipe-bakes.ts';
import { stackAnswer, stackFinder } from '../views/stack-choices.ts';
import { wordsFor } from '../wording/locales/index.ts';
import type { PlanState } from './plan-state.ts';
import { questionOf, recipeOf, withStep } from './question.ts';

/** What the log taught is worked out once for each recipe of a content. */
const known = new WeakMap<Recipe, RecipeBakes>();

function bakesOf(recipe: Recipe, content: PlannerContent): RecipeBakes {
  const bakes = known.get(recipe) ?? recipeBakes(recipe, content);
  known.set(recipe, bakes);
  return bakes;
}

export interface PlanAnswer {
  view: PlanView;
  /** What it was worked out from, for its working. */
  worked: Pick<Planned, 'input' | 'mix'>;
  /** What its ingredients cost; null while nothing has a price. */
  cost: PlanCost | null;
  /** The same answer as `mix --json` gives, for whoever asks. */
  json: () => MixJson;
}

const withStepOf = (content: PlannerContent, state: PlanState): PlannerContent => ({
  ...content,
  kitchen: withStep(content.kitchen, state),
});

/** Weights with their unit, in the one asked for. */
function withUnits(cost: PlanCost | null, kitchen: Kitchen, mass: PlanState['mass']): PlanCost | null {
  if (cost === null) return null;
  const said = ({ text, unit }: Figure): string =>
    unit === 'g' ? answerIn(`${text} g`, kitchen, mass) : text;
  const lines = cost.lines.map((line) => ({ ...line, amount: { ...line.amount, text: said(line.amount) } }));
  return { ...cost, lines };
}

/** The plan; null while no tins are asked for. */
export function planAnswer(state: PlanState, published: PlannerContent): Result<PlanAnswer> | null {
  if (state.tins.length === 0) return null;
  const content = withStepOf(published, state);
  const question = questionOf(state, content);
  if (!question.ok) return question;
  const { recipe, heightMm, egg = content.kitchen.egg } = question.value;
  const planned = plan({ ...question.value, bakes: bakesOf(recipe, published) }, content);
  if (!planned.ok) return planned;
  const { view, mix, input } = planned.value;
  return succeed({
    view: answerIn(view, content.kitchen, state.mass),
    worked: { input, mix },
    cost: withUnits(planCost(planned.value, content, content.currency), content.kitchen, state.mass),
    json: () =>
      mixJson(mix, {
        finishedHeightMm: heightMm ?? recipe.finishedHeightMm,
        egg,
        bakes: bakesOf(recipe, published),
        locale: content.kitchen.locale,
      }),
  });
}

const MOST_FILLS = 8;

/** What so many eggs make and which tins they fill; null for a recipe without eggs. */
export function eggsAnswer(state: PlanState, published: PlannerContent): EggRung | null {
  const content = withStepOf(published, state);
  const recipe = recipeOf(state, content);
  if (recipe === null) return null;
  const flavours = state.flavourIds.flatMap((id) => content.flavours.find((one) => one.id === id) ?? []);
  const input = chartInput(content, recipe, flavours);
  return eggRung(input, state.eggs, MOST_FILLS, wordsFor(content.kitchen.locale));
}

const MOST_STACKS = 8;

/** Stacks of this kitchen's tins for so many portions; null without recipes. */
export function portionsAnswer(state: PlanState, published: PlannerContent): StackAnswerView | null {
  const content = { ...withStepOf(published, state), orders: [] };
  const recipe = recipeOf(state, content);
  const size = content.portionSizes.find(({ id }) => id === state.size);
  if (recipe === null || size === undefined) return null;
  const tiers = content.kitchen.tins.flatMap((tin) => {
    if (tin.owned < 1) return [];
    const portions = tinPortions(tin, size);
    return portions === null ? [] : [{ tin, portions: portions.rows.good }];
  });
  const ask = { wanted: state.portions, keepsTopTier: false, most: MOST_STACKS };
  return stackAnswer(state.portions, stackFinder(tiers, recipe, content)(ask), recipe, content);
}

/** Problems as one would tell them at the table. */
export const told = (problems: readonly Problem[]): string[] =>
  problems.map(({ message, hint }) => `${message}. ${hint ?? ''}`.trim());
