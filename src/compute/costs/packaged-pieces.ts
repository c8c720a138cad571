/**
 * How many boxes, cards and cases does an order take? Cakes and dummy tiers each stand on something; cutting cakes
 * are counted among the cakes and by themselves; small cakes by the piece and by the box, the last one part full.
 */
import type { MadeUpPer, PackagingPer } from '../../domain/costs.ts';
import type { BoxSize, Order } from '../../domain/order.ts';

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

/** What the order as asked for says of them; what follows from its making up is counted with its plan. */
export function packagedPieces({
  tiers,
  dummies = [],
}: Pick<Order, 'tiers' | 'dummies'>): Record<Exclude<PackagingPer, MadeUpPer>, number> {
  const counted = (which: (tier: Order['tiers'][number]) => boolean): number =>
    sum(tiers.filter(which).map(({ count }) => count));
  const boxes = (size: BoxSize): number =>
    sum(tiers.map(({ small, count }) => (small?.box === size ? Math.ceil(count / size) : 0)));
  return {
    order: 1,
    cake: counted(({ small }) => small === undefined) + dummies.length,
    'cutting cake': counted(({ beside }) => beside === 'cutting cake'),
    'small cake': counted(({ small }) => small !== undefined),
    'box of 6': boxes(6),
    'box of 12': boxes(12),
    'box of 24': boxes(24),
  };
}
