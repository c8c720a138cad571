/** A stacked order from the table up, on the weights and sizes that its plan gives; dummies stand among the cakes. */
import type { FinishingSettings } from '../../domain/finishing.ts';
import { isStacked } from '../../domain/order.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { cakePlan } from '../finishes/cake-plan.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { CARD_THICKNESS_MM, type StackPlan, type StackTier, stackPlan } from '../stacks/stack-plan.ts';
import { tierStands } from '../stacks/tier-stands.ts';
import type { PlannedDummy, PlannedOrder, PlannedTier } from './planned-order.types.ts';

/** A tier of a stack, cake or not. */
export type StackPart = PlannedTier | PlannedDummy;

/** What a stack needs to know of its tiers beyond the plan. */
export interface OrderStack extends StackPlan {
  /** The tiers, bottom first. */
  parts: StackPart[];
  /** Bare cakes, bottom first. */
  plans: CakePlan[];
  /** All coats and sheets of each tier, one side. */
  coatsMm: number[];
  /** Whether each tier may stand on the one below; true for the lowest. */
  stands: boolean[];
  cardThicknessMm: number;
}

export const isDummyPart = (part: StackPart): part is PlannedDummy => 'form' in part.ask;

/** The tiers of an order from the bottom up, cakes and dummies in their places. */
export function stackParts({ tiers, dummies }: Pick<PlannedOrder, 'tiers' | 'dummies'>): StackPart[] {
  const parts: StackPart[] = tiers.filter(({ ask }) => ask.beside === undefined);
  for (const dummy of dummies) parts.splice(dummy.ask.at, 0, dummy);
  return parts;
}

interface Known {
  part: StackPart;
  plan: CakePlan;
  coatedAcrossMm: number;
}

function known(part: StackPart): Known[] {
  const plan = cakePlan(part.tin);
  const { coatedAcrossMm } = part;
  return plan === null || coatedAcrossMm === null ? [] : [{ part, plan, coatedAcrossMm }];
}

const stackTier = ({ part, plan, coatedAcrossMm }: Known): StackTier => ({
  name: part.tin.name,
  plan,
  coatedAcrossMm,
  coatedHeightMm: part.coatedHeightMm,
  weightG: part.weightGEach,
  ...(isDummyPart(part) ? { solid: true } : {}),
});

/**
 * The stack of an order; null for one that is not stacked, 'unknown-width' where a tier's tin is known only by the
 * water it holds, so that nobody can say what it stands on.
 */
export function orderStack(
  planned: PlannedOrder,
  settings: Pick<FinishingSettings, 'boardThicknessMm'>,
): OrderStack | 'unknown-width' | null {
  if (!isStacked(planned.order)) return null;
  const all = stackParts(planned);
  const found = all.flatMap(known);
  const drumAcrossMm = all[0]?.boardAcrossMm ?? null;
  if (found.length < all.length || drumAcrossMm === null) return 'unknown-width';
  const boards = {
    drumAcrossMm,
    drumThicknessMm: settings.boardThicknessMm,
    cardThicknessMm: CARD_THICKNESS_MM,
  };
  return {
    ...stackPlan(found.map(stackTier), boards, planned.order.travelsAssembled),
    parts: found.map(({ part }) => part),
    plans: found.map(({ plan }) => plan),
    coatsMm: found.map(({ part }) => quantiseMm(part.coatedHeightMm - part.builtHeightMm)),
    stands: found.map(({ plan }, at) => {
      const below = found[at - 1];
      return below === undefined || tierStands(plan, below.plan);
    }),
    cardThicknessMm: CARD_THICKNESS_MM,
  };
}
