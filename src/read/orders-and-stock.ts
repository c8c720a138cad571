/** The orders of a content folder, earliest hand-over first, and its stock list. */
import { join } from 'node:path';
import type { Order } from '../domain/order.ts';
import type { Problem } from '../domain/problem.ts';
import type { Shelf } from '../parse/formula.ts';
import { type OrderContext, parseOrderYaml } from '../parse/orders.ts';
import { error } from '../parse/problems.ts';
import { quote } from '../parse/quote.ts';
import { parseStockCsv, type StockOutcome } from '../parse/stock.ts';
import { type Gathered, readEach } from './read-each.ts';
import { readText, whatIs } from './safe-file.ts';

const STOCK = 'stock.csv';

/** Two customers by one code would get each other's cake. One customer may have several orders on other days. */
function repeated(orders: readonly Order[]): Problem[] {
  const seen = new Map<string, string>();
  return orders.flatMap(({ id, reference, handOver }) => {
    const key = `${reference} ${handOver.localTime}`;
    const earlier = seen.get(key);
    if (earlier === undefined) {
      seen.set(key, id);
      return [];
    }
    const message = `${quote(reference)} has another order for the same time, in orders/${earlier}.yaml`;
    const hint = 'Write both cakes into one file, or give one its own code.';
    return [{ ...error('order-reference-repeated', message, hint), file: `orders/${id}.yaml` }];
  });
}

function byHandOver(a: Order, b: Order): number {
  const [one, other] = [`${a.handOver.localTime} ${a.id}`, `${b.handOver.localTime} ${b.id}`];
  return one < other ? -1 : one > other ? 1 : 0;
}

/** Every order, the earliest hand-over first. */
export async function readOrders(folder: string, context: OrderContext): Promise<Gathered<Order>> {
  const orders = await readEach(folder, 'orders', '.yaml', (text, file, id) => {
    const { order, problems } = parseOrderYaml(text, file, id, context);
    return { item: order, problems };
  });
  const problems = [...orders.problems, ...repeated(orders.items)];
  return { ...orders, items: orders.items.sort(byHandOver), problems };
}

/** What stock.csv says is on hand; nothing when the file is not there. */
export async function readStock(folder: string, shelf: Shelf): Promise<StockOutcome> {
  if ((await whatIs(join(folder, STOCK))) === 'nothing') return { stock: [], problems: [] };
  const text = await readText(folder, STOCK);
  return text.ok ? parseStockCsv(text.value, STOCK, shelf) : { stock: [], problems: text.problems };
}
