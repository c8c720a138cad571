/** A plan sent by somebody else may name what this kitchen does not have: it is planned without, and said. */
import type { PlannerContent } from '../views/planner-content.ts';
import type { PlanState } from './plan-state.ts';

export interface KnownPlan {
  state: PlanState;
  /** Names that mean nothing here, as they were sent. */
  unknown: string[];
}

/** The same plan, and the very same value, where everything in it is known. */
export function knownPlan(
  state: PlanState,
  content: Pick<PlannerContent, 'recipes' | 'flavours' | 'finishes'>,
): KnownPlan {
  const has = (list: readonly { id: string }[], id: string): boolean => list.some((one) => one.id === id);
  const finishOf = (text: string): string => text.slice(0, text.lastIndexOf('--'));
  const recipeIds = [state.recipeId].filter((id) => id !== '');
  const unknown = [
    ...recipeIds.filter((id) => !has(content.recipes, id)),
    ...state.flavourIds.filter((id) => !has(content.flavours, id)),
    ...state.finishes.map(finishOf).filter((id) => !has(content.finishes, id)),
  ];
  if (unknown.length === 0) return { state, unknown };
  return {
    state: {
      ...state,
      recipeId: unknown.includes(state.recipeId) ? '' : state.recipeId,
      flavourIds: state.flavourIds.filter((id) => has(content.flavours, id)),
      finishes: state.finishes.filter((text) => has(content.finishes, finishOf(text))),
    },
    unknown: [...new Set(unknown)],
  };
}
