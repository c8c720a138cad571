/** The demo's three tiers with sizes and weights that can be added up by hand, and whatever a test makes of them. */
import { orderStack } from '../../../src/compute/orders/order-stack.ts';
import type { PlannedOrder, PlannedTier } from '../../../src/compute/orders/planned-order.types.ts';
import type { Content } from '../../../src/domain/content.ts';
import { stackView } from '../../../src/views/stack-sheet.ts';
import type { StackView } from '../../../src/views/stack-sheet.types.ts';
import { orderNamed, plannedDemo } from '../../compute/orders/demo-orders.ts';

export type TierChange = Partial<
  Pick<PlannedTier, 'tin' | 'coatedAcrossMm' | 'coatedHeightMm' | 'builtHeightMm' | 'weightGEach'>
>;

/** Coats of 10 mm; 110, 100 and 90 mm high; 3,800, 2,500 and 1,400 g, bottom first; a drum of 14 in. */
const BY_HAND: readonly TierChange[] = [
  { coatedAcrossMm: 274, coatedHeightMm: 110, builtHeightMm: 100, weightGEach: 3800 },
  { coatedAcrossMm: 223.2, coatedHeightMm: 100, builtHeightMm: 90, weightGEach: 2500 },
  { coatedAcrossMm: 172.4, coatedHeightMm: 90, builtHeightMm: 80, weightGEach: 1400 },
];

export interface StackedDemo {
  content: Content;
  orders: PlannedOrder[];
  /** The three tiers, changed bottom first. */
  byHand(changes?: readonly TierChange[], ask?: Partial<PlannedOrder['order']>): PlannedOrder;
  /** As the demo is set, or with another weight from which two people lift. */
  viewOf(planned: PlannedOrder, liftTwoAboveG?: number): StackView;
}

export async function stackedDemo(): Promise<StackedDemo> {
  const { content, orders } = await plannedDemo();
  const three = orderNamed(orders, 'three-tiers-for-sixty');
  return {
    content,
    orders,
    byHand: (changes = [], ask = {}) => ({
      ...three,
      order: { ...three.order, ...ask },
      tiers: three.tiers.map((tier, at) => ({
        ...tier,
        ...BY_HAND[at],
        boardAcrossMm: 355.6,
        ...changes[at],
      })),
    }),
    viewOf(planned, liftTwoAboveG = content.work.liftTwoAboveG) {
      const stack = orderStack(planned, content.finishing);
      if (stack === null || stack === 'unknown-width') throw new Error(`No stack: ${stack}`);
      return stackView(planned, stack, { ...content, work: { ...content.work, liftTwoAboveG } });
    },
  };
}
