/** Every order and every week of a kitchen as views. */
import type { Content } from '../domain/content.ts';
import { orderView } from './order.ts';
import type { OrderView } from './order.types.ts';
import { rememberedForOrders } from './order-memory.ts';
import { workedOrders } from './planned-orders.ts';
import { weekView } from './week.ts';
import type { WeekView } from './week.types.ts';

export interface OrdersView {
  orders: OrderView[];
  weeks: WeekView[];
}

/** Orders earliest hand-over first, and their weeks; one content is worked out once. */
export const ordersView = rememberedForOrders((content: Content): OrdersView => {
  const { orders, weeks, bakes } = workedOrders(content);
  return {
    orders: orders.map((order) => {
      const together = weeks.find(({ planned }) => planned.week === order.week);
      return orderView(order, together?.planned, content, bakes);
    }),
    weeks: weeks.map((week) => weekView(week, content)),
  };
});
