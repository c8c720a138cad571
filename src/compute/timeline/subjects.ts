/** What steps are about: tiers, bowlfuls, loads. */
import type { Subject } from './activity.types.ts';
import type { BatchBowlful, BatchTin } from './batches.ts';
import type { TierRef } from './plan.types.ts';
import type { DummyWork, OrderWork } from './work.ts';

/** Some of a tier, or a dummy. */
export interface SubjectTier {
  order: Pick<OrderWork, 'id'>;
  tier: Pick<DummyWork, 'id'>;
  count: number;
}

const refs = (tins: readonly SubjectTier[]): TierRef[] =>
  tins.map(({ order, tier, count }) => ({ orderId: order.id, tierId: tier.id, count }));

/** What a step on some tins of a load is about. */
export const subjectOf = (tins: readonly SubjectTier[], loadId: string | null): Subject => ({
  orderIds: [...new Set(tins.map(({ order }) => order.id))],
  tiers: refs(tins),
  bowlfulId: null,
  share: 1,
  loadId,
  finishId: null,
});

export const bowlfulSubject = ({ bowlful, share, tins }: BatchBowlful, loadId: string): Subject => ({
  ...subjectOf(tins, loadId),
  bowlfulId: bowlful.id,
  share,
});

/** Whether a reference means this tier. */
export const isOf = (ref: TierRef, { order, tier }: BatchTin): boolean =>
  ref.orderId === order.id && ref.tierId === tier.id;
