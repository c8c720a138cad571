/** A stacked order from the table up, on the weights and sizes that its plan gives. */
import type { FinishingSettings } from '../../domain/finishing.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { cakePlan } from '../finishes/cake-plan.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { CARD_THICKNESS_MM, type StackPlan, type StackTier, stackPlan } from '../stacks/stack-plan.ts';
import { tierStands } from '../stacks/tier-stands.ts';
import type { PlannedOrder, PlannedTier } from './planned-order.types.ts';

/** What a stack needs to know of its tiers beyond the plan. */
export interface OrderStack extends StackPlan {
  /** Bare cakes, bottom first. */
  plans: CakePlan[];
  /** All coats and sheets of each tier, one side. */
  coatsMm: number[];
  /** Whether each tier may stand on the one below; true for the lowest. */
  stands: boolean[];
  cardThicknessMm: number;
}

const isStack = ({ order }: PlannedOrder): boolean =>
  order.arrangement === 'stacked' && order.tiers.length > 1;

interface Known {
  tier: PlannedTier;
  plan: CakePlan;
  coatedAcrossMm: number;
}

function known(tier: PlannedTier): Known[] {
  const plan = cakePlan(tier.tin);
  const { coatedAcrossMm } = tier;
  return plan === null || coatedAcrossMm === null ? [] : [{ tier, plan, coatedAcrossMm }];
}

const stackTier = ({ tier, plan, coatedAcrossMm }: Known): StackTier => ({
  name: tier.tin.name,
  plan,
  coatedAcrossMm,
  coatedHeightMm: tier.coatedHeightMm,
  weightG: tier.weightGEach,
});

/**
 * The stack of an order; null for one that is not stacked, 'unknown-width' where a tier's tin is known only by the
 * water it holds, so that nobody can say what it stands on.
 */
export function orderStack(
  planned: PlannedOrder,
  settings: Pick<FinishingSettings, 'boardThicknessMm'>,
): OrderStack | 'unknown-width' | null {
  if (!isStack(planned)) return null;
  const tiers = planned.tiers.flatMap(known);
  const drumAcrossMm = planned.tiers[0]?.boardAcrossMm ?? null;
  if (tiers.length < planned.tiers.length || drumAcrossMm === null) return 'unknown-width';
  const boards = {
    drumAcrossMm,
    drumThicknessMm: settings.boardThicknessMm,
    cardThicknessMm: CARD_THICKNESS_MM,
  };
  return {
    ...stackPlan(tiers.map(stackTier), boards, planned.order.travelsAssembled),
    plans: tiers.map(({ plan }) => plan),
    coatsMm: tiers.map(({ tier }) => quantiseMm(tier.coatedHeightMm - tier.builtHeightMm)),
    stands: tiers.map(({ plan }, at) => {
      const below = tiers[at - 1];
      return below === undefined || tierStands(plan, below.plan);
    }),
    cardThicknessMm: CARD_THICKNESS_MM,
  };
}
