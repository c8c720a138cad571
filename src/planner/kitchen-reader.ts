/**
 * The script that is fetched when somebody opens a kitchen.yaml or makes an order of a plan: the build's own readers,
 * on the device.
 */
import type { Currency } from '../domain/money.ts';
import type { Order } from '../domain/order.ts';
import type { OrderWeek } from '../domain/order-week.ts';
import type { Outline } from '../domain/outline.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { WorkSettings } from '../domain/work-settings.ts';
import { parseIngredientsYaml } from '../parse/ingredients.ts';
import { parseKitchenYaml } from '../parse/kitchen.ts';
import type { KnownNames } from '../parse/known-names.ts';
import { orderWeeks } from '../parse/order-weeks.ts';
import { parseOrderYaml } from '../parse/orders.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import { packsText } from './own-prices.ts';

declare global {
  interface Window {
    tinwrightReadKitchen?: typeof readKitchen;
    tinwrightReadOrder?: typeof readOrder;
    tinwrightReadPrices?: typeof readPrices;
  }
}

/** As the build reads it; drawings are the published kitchen's. */
export function readKitchen(text: string, outlines: readonly { id: string; outline: Outline }[]) {
  const { kitchen, problems } = parseKitchenYaml(
    text,
    'kitchen.yaml',
    new Map(outlines.map(({ id, outline }) => [id, { id, outline, sized: true }])),
  );
  return { kitchen, problems };
}

/** The prices of an ingredients.yaml as the planner keeps them, and what is wrong with the file. */
export function readPrices(text: string, currency: Currency) {
  const { ingredients, problems } = parseIngredientsYaml(text, 'ingredients.yaml', currency);
  const prices = ingredients.flatMap(({ id, packs }): [string, string][] =>
    packs === undefined ? [] : [[id, packsText(packs, currency)]],
  );
  return {
    prices: Object.fromEntries(prices),
    problems: problems.filter(({ severity }) => severity === 'error'),
  };
}

export interface ReadOrder {
  order: Order;
  /** The days that its work is planned in. */
  week: OrderWeek;
}

const names = (all: readonly { id: string }[]): KnownNames => ({ ids: all.map(({ id }) => id), broken: [] });

/** An order file as the build reads it, with the week of its hand-over; `id` is the file's name. */
export function readOrder(
  text: string,
  id: string,
  content: PlannerContent,
  work: WorkSettings,
): Result<ReadOrder> {
  const { kitchen, recipes, flavours, finishes } = content;
  const bunTins = kitchen.bunTins ?? [];
  const { order, problems } = parseOrderYaml(text, `${id}.yaml`, id, {
    tins: names(kitchen.tins),
    bunTins: names(bunTins),
    recipes: names(recipes),
    flavours: names(flavours),
    finishes: names(finishes),
    found: { tins: kitchen.tins, bunTins, recipes, finishes },
    currency: content.currency,
    timeZone: work.timeZone,
  });
  if (order === null) return fail(...problems);
  const weeks = orderWeeks([order], work);
  if (!weeks.ok) return weeks;
  const [week] = weeks.value;
  return week === undefined ? fail() : succeed({ order, week });
}

if (typeof window !== 'undefined') {
  window.tinwrightReadKitchen = readKitchen;
  window.tinwrightReadOrder = readOrder;
  window.tinwrightReadPrices = readPrices;
}
