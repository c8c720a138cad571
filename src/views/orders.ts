/** Every order and every week of a kitchen as views; one content is worked out once. */
import type { Content } from '../domain/content.ts';
import { orderView } from './order.ts';
import type { OrderView } from './order.types.ts';
import { workedOrders } from './planned-orders.ts';
import { weekView } from './week.ts';
import type { WeekView } from './week.types.ts';

export interface OrdersView {
  orders: OrderView[];
  weeks: WeekView[];
}

const known = new WeakMap<Content, OrdersView>();

/** Orders earliest hand-over first, and their weeks. */
export function ordersView(content: Content): OrdersView {
  const before = known.get(content);
  if (before !== undefined) return before;
  const { orders, weeks, bakes } = workedOrders(content);
  const view = {
    orders: orders.map((order) => orderView(order, content, bakes)),
    weeks: weeks.map((week) => weekView(week, content)),
  };
  known.set(content, view);
  return view;
}
