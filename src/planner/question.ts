/** From what was asked, as text, to a question the computations can answer: or to what is wrong with it. */
import type { Kitchen } from '../domain/kitchen.ts';
import { USES } from '../domain/order.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { TinCount } from '../domain/tin.ts';
import { parseSpec } from '../parse/spec.ts';
import { parseEggWeight } from '../parse/units/egg-size.ts';
import { parseLength } from '../parse/units/length.ts';
import type { PlanQuestion } from '../views/plan.ts';
import type { FinishChoice } from '../views/plan-finishes.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import type { PlanState } from './plan-state.ts';

/** 'vanilla-buttercream--filling'; the bead that holds a soft filling comes by itself. */
function finishChoice(text: string): FinishChoice[] {
  const at = text.lastIndexOf('--');
  const use = USES.find((one) => one === text.slice(at + 2));
  return at < 1 || use === undefined ? [] : [{ finishId: text.slice(0, at), use }];
}

/** The recipe asked for; while none is, the one that stands in the bake log most often. */
export function recipeOf({ recipeId }: PlanState, { recipes, bakeLog }: PlannerContent): Recipe | null {
  const asked = recipes.find(({ id }) => id === recipeId);
  if (asked !== undefined) return asked;
  const logged = ({ id }: Recipe): number => bakeLog.filter((row) => row.recipeId === id).length;
  return [...recipes].sort((a, b) => logged(b) - logged(a))[0] ?? null;
}

/** The tins asked for, by id or described; a tin of one's own by its description. */
function tinsOf(state: PlanState, content: PlannerContent): Result<TinCount[]> {
  const { tins } = content.kitchen;
  const context = { tins, outlines: content.outlines };
  const found = state.tins.map(({ tin, count }): Result<TinCount[]> => {
    const known = tins.find(({ id }) => id === tin);
    return known === undefined ? parseSpec(`${count} x ${tin}`, context) : succeed([{ tin: known, count }]);
  });
  const problems = found.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? fail(...problems) : succeed(found.flatMap((one) => (one.ok ? one.value : [])));
}

/** The kitchen with the scale step asked for. */
export const withStep = (kitchen: Kitchen, { step }: PlanState): Kitchen =>
  step === 0 ? kitchen : { ...kitchen, scale: { ...kitchen.scale, stepG: step } };

/** Everything wrong at once. */
export function questionOf(state: PlanState, content: PlannerContent): Result<PlanQuestion> {
  const recipe = recipeOf(state, content);
  const tins = tinsOf(state, content);
  const height = state.height.trim() === '' ? null : parseLength(state.height);
  const scheme = content.kitchen.egg.size?.scheme;
  const egg = state.egg.trim() === '' ? null : parseEggWeight(state.egg, scheme);
  const problems: Problem[] = [tins, height, egg].flatMap((one) =>
    one === null || one.ok ? [] : one.problems,
  );
  if (recipe === null || !tins.ok || problems.length > 0) return fail(...problems);
  return succeed({
    recipe,
    flavours: state.flavourIds.flatMap((id) => content.flavours.find((flavour) => flavour.id === id) ?? []),
    tins: tins.value,
    ...(height?.ok ? { heightMm: height.value.mm } : {}),
    ...(egg?.ok ? { egg: { ...content.kitchen.egg, ...egg.value } } : {}),
    finishes: state.finishes.flatMap(finishChoice),
    sizeId: state.size,
  });
}
