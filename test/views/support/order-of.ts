import type { OrderView } from '../../../src/views/order.types.ts';
import type { OrdersView } from '../../../src/views/orders.ts';

/** One order among the views of all; throws where there is none. */
export function orderOf({ orders }: OrdersView, id: string): OrderView {
  const found = orders.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no order ${id}`);
  return found;
}
