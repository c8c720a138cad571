/** The demo's orders, read and planned once for the tests of a file. */

import type { OrderContent } from '../../../src/compute/orders/order-content.ts';
import { type PlannedOrder, planOrder } from '../../../src/compute/orders/plan-order.ts';
import type { Content } from '../../../src/domain/content.ts';
import { recipeBakes } from '../../../src/views/recipe-bakes.ts';
import { demoContent } from '../../samples/demo.ts';

export function orderContent(content: Content): OrderContent {
  const bakes = new Map(content.recipes.map((recipe) => [recipe.id, recipeBakes(recipe, content)]));
  return {
    ...content,
    guidance: (recipe, tin, heightMm) => bakes.get(recipe.id)?.guidance(tin, heightMm) ?? null,
  };
}

export async function plannedDemo(): Promise<{ content: Content; orders: PlannedOrder[] }> {
  const content = await demoContent();
  const own = orderContent(content);
  const orders = content.orders.map((order) => {
    const planned = planOrder(order, own);
    if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
    return planned.value;
  });
  return { content, orders };
}

export function orderNamed(orders: readonly PlannedOrder[], id: string): PlannedOrder {
  const found = orders.find(({ order }) => order.id === id);
  if (found === undefined) throw new Error(`No order ${id}`);
  return found;
}
