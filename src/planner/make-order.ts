/** From a plan and what was said of its order to the prints of that order: read as the build reads an order file. */
import type { PaperName } from '../domain/kitchen.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import { wordsFor } from '../wording/locales/index.ts';
import type { ReadOrder } from './kitchen-reader.ts';
import { printShop } from './load-print-shop.ts';
import { loadScript } from './load-script.ts';
import { idOf, type OrderDetails, orderId, orderYaml } from './order-file.ts';
import type { PlanState } from './plan-state.ts';
import type { MadeOrder, PrintShop } from './print-shop.ts';
import { questionOf, withStep } from './question.ts';

export interface OrderFile {
  /** The file's name without its ending. */
  id: string;
  text: string;
  /** The kitchen that it is made in: with the plan's own eggs and scale, and every tin by a name that a file may use. */
  content: PlannerContent;
}

/** The order file of a plan, or what is wrong with the plan. */
export function orderFile(
  state: PlanState,
  content: PlannerContent,
  details: OrderDetails,
): Result<OrderFile> {
  const question = questionOf(state, content);
  if (!question.ok) return question;
  const { recipe, tins, egg = content.kitchen.egg } = question.value;
  const shelf = content.kitchen.tins.map((tin) => ({ ...tin, id: idOf(tin.id) }));
  const others = tins
    .map(({ tin, count }) => ({ ...tin, id: idOf(tin.id), owned: count }))
    .filter(({ id }) => shelf.every((tin) => tin.id !== id));
  const kitchen = { ...withStep(content.kitchen, state), egg, tins: [...shelf, ...others] };
  const text = orderYaml(state, recipe.id, tins, details, wordsFor(kitchen.locale));
  return succeed({ id: orderId(details), text, content: { ...content, kitchen } });
}

export type OrderPrint = 'orderSheet' | 'labels';

/** The prints of a plan's order; fetches the print shop and the reader first. Throws when they do not come. */
export async function madeOrder(
  { id, text, content }: OrderFile,
  what: OrderPrint,
  paper: PaperName,
): Promise<Result<MadeOrder>> {
  const opened: Result<PrintShop> = await printShop();
  if (!opened.ok) return opened;
  if (window.tinwrightReadOrder === undefined) await loadScript('script/kitchen.js');
  const house = { ...opened.value.house, ...content.house };
  const order: Result<ReadOrder> = window.tinwrightReadOrder?.(text, id, content, house.work) ?? fail();
  return order.ok ? opened.value[what](content, order.value, paper) : order;
}
