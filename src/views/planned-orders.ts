/** All orders of a kitchen worked out once for page, prints and data: planned, shopped for, timed and costed. */
import { type OrderCost, orderCost } from '../compute/costs/order-cost.ts';
import { type Effort, effortOf } from '../compute/costs/order-effort.ts';
import { orderPieces } from '../compute/costs/order-pieces.ts';
import type { OrderContent } from '../compute/orders/order-content.ts';
import { type PlannedOrder, planOrder } from '../compute/orders/plan-order.ts';
import { mixesOfOrder, workOf } from '../compute/orders/work-of.ts';
import { withPackaging } from '../compute/shopping/packaging-lines.ts';
import { materialsOf, type ShoppingList, shoppingList } from '../compute/shopping/shopping-list.ts';
import type { WeekPlan } from '../compute/timeline/plan.types.ts';
import { planWeek as planTimetable } from '../compute/timeline/plan-week.ts';
import { startOfEdition } from '../compute/timeline/start-of-edition.ts';
import type { WorkRoom } from '../compute/timeline/work.ts';
import { type PlannedWeek, planWeek } from '../compute/weeks/plan-week.ts';
import type { Content } from '../domain/content.ts';
import type { Order } from '../domain/order.ts';
import type { OrderWeek } from '../domain/order-week.ts';
import type { Result } from '../domain/result.ts';
import { dummyCosts, dummyHires } from './order-dummies.ts';
import { rememberedForOrders } from './order-memory.ts';
import { type RecipeBakes, recipeBakes } from './recipe-bakes.ts';

export interface WorkedOrder {
  planned: PlannedOrder;
  week: OrderWeek;
  shopping: ShoppingList;
  effort: Effort;
  cost: OrderCost;
}

/** A week with its timetable, or the reasons why its work does not fit into its days. */
export interface WorkedWeek {
  planned: PlannedWeek;
  room: WorkRoom;
  plan: Result<WeekPlan>;
}

export interface WorkedOrders {
  orders: WorkedOrder[];
  weeks: WorkedWeek[];
  bakes: Map<string, RecipeBakes>;
}

/** Reading refuses what cannot be made, so a refusal here is a bug. */
function sound<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join(' '));
  return result.value;
}

function workedOrder(order: Order, content: Content, own: OrderContent): WorkedOrder {
  const planned = sound(planOrder(order, own));
  const week = content.weeks.find(({ orderIds }) => orderIds.includes(order.id));
  if (week === undefined) throw new Error(`${order.id} is in no week.`);
  const effort = effortOf(workOf([planned], mixesOfOrder(planned)), { ...content, calendar: week.calendar });
  const pieces = orderPieces(planned, content.finishing);
  const food = shoppingList(planned.uses, content.stock, content.ingredients, materialsOf([planned]));
  const cost = orderCost(
    order.title,
    {
      ingredients: food.lines.flatMap(({ name, usedMinor, material }) =>
        material === undefined ? [{ name, usedMinor: usedMinor ?? 0 }] : [],
      ),
      materials: dummyCosts(planned, content),
      pieces: pieces.counts,
      widthsMm: pieces.widthsMm,
      ovenKwh: effort.ovenKwh,
      handsOnMin: effort.handsOnMin,
      extras: [...order.extras, ...dummyHires(planned, content)],
    },
    content.costs,
  );
  const shopping = withPackaging(food, content.costs.packaging, pieces);
  return { planned, week, shopping, effort, cost };
}

function worked(content: Content): WorkedOrders {
  const bakes = new Map(content.recipes.map((recipe) => [recipe.id, recipeBakes(recipe, content)]));
  const own: OrderContent = {
    ...content,
    guidance: (recipe, tin, heightMm) => bakes.get(recipe.id)?.guidance(tin, heightMm) ?? null,
  };
  const orders = content.orders.map((order) => workedOrder(order, content, own));
  const weeks = content.weeks.map((week) => {
    const planned = orders
      .filter(({ planned: { order } }) => week.orderIds.includes(order.id))
      .map((one) => one.planned);
    const together = sound(
      planWeek(week, planned, { ...own, times: content.times, stock: content.stock, costs: content.costs }),
    );
    const notBefore = startOfEdition(week.calendar, content.kitchen.edition);
    const room = {
      work: content.work,
      times: content.times,
      calendar: week.calendar,
      ...(notBefore === undefined ? {} : { notBefore }),
    };
    return { planned: together, room, plan: planTimetable(together.work, room) };
  });
  return { orders, weeks, bakes };
}

/** The orders and weeks of a kitchen; the same content is worked out once. */
export const workedOrders = rememberedForOrders(worked);
