/** Egg that no heat reaches: in royal icing. Meringue for buttercream is made over hot water. */
import type { PlannedFinish } from '../orders/planned-order.types.ts';

/** Whether a finish holds egg that stays raw. */
export const hasRawWhite = ({ finish }: PlannedFinish): boolean =>
  finish.kind === 'royal icing' && finish.parts.some(({ eggPart }) => eggPart !== undefined);
