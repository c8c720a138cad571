/** Every order and every week of a kitchen as views. */
import type { Content } from '../domain/content.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { ageWarningsOf } from './age-warnings.ts';
import { labelsOfOrder } from './label-orders.ts';
import { orderView } from './order.ts';
import type { OrderView } from './order.types.ts';
import { orderKeeping } from './order-keeping.ts';
import { rememberedForOrders } from './order-memory.ts';
import { type WorkedWeek, workedOrders } from './planned-orders.ts';
import { timetableView } from './timetable/timetable.ts';
import type { TimetableView } from './timetable/timetable.types.ts';
import { weekView } from './week.ts';
import type { WeekView } from './week.types.ts';

/** The hours of one order, or of a whole week. */
export interface TimetableOf {
  /** Of the order, or null for the week's own. */
  orderId: string | null;
  weekId: string;
  view: TimetableView;
}

export interface OrdersView {
  orders: OrderView[];
  weeks: WeekView[];
  /** Week by week: the week's own, then one for each order; none for a week whose work does not fit. */
  timetables: TimetableOf[];
}

function timetablesOf({ planned, room, plan }: WorkedWeek, { kitchen }: Content): TimetableOf[] {
  if (!plan.ok) return [];
  const { week, orders, work } = planned;
  const base = { kitchen, work, room, plan: plan.value };
  const { title } = orderWordsFor(kitchen.locale).week;
  return [
    {
      orderId: null,
      weekId: week.id,
      view: timetableView({ ...base, id: week.id.toLowerCase(), title: title(week.id) }),
    },
    ...orders.map(({ order: { id, title: own } }) => ({
      orderId: id,
      weekId: week.id,
      view: timetableView({ ...base, id, title: own, orderId: id }),
    })),
  ];
}

/** Orders earliest hand-over first, and their weeks; one content is worked out once. */
export const ordersView = rememberedForOrders((content: Content): OrdersView => {
  const { orders, weeks, bakes } = workedOrders(content);
  return {
    orders: orders.map((order) => {
      const together = weeks.find(({ planned }) => planned.week === order.week);
      const keeping = orderKeeping(labelsOfOrder(order, weeks, content));
      const view = orderView(order, together?.planned, keeping, content, bakes);
      return { ...view, warnings: [...ageWarningsOf(together?.plan, view.id), ...view.warnings] };
    }),
    weeks: weeks.map((week) => weekView(week, content)),
    timetables: weeks.flatMap((week) => timetablesOf(week, content)),
  };
});
