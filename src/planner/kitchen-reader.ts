/**
 * The script that is fetched when somebody opens or saves a kitchen.yaml or makes an order of a plan: the build's own
 * readers, on the device.
 */
import { parse } from 'yaml';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Currency } from '../domain/money.ts';
import type { Order } from '../domain/order.ts';
import type { OrderWeek } from '../domain/order-week.ts';
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { WorkSettings } from '../domain/work-settings.ts';
import { parseIngredientsYaml } from '../parse/ingredients.ts';
import { parseKitchenYaml } from '../parse/kitchen.ts';
import type { KitchenExtras } from '../parse/kitchen-extras.ts';
import type { KnownNames } from '../parse/known-names.ts';
import { orderWeeks } from '../parse/order-weeks.ts';
import { parseOrderYaml } from '../parse/orders.ts';
import type { Drawings, OutlineDrawing } from '../parse/tins/tin-entry.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import { kitchenYaml, openedText } from './kitchen-file.ts';
import { packsText } from './own-prices.ts';

declare global {
  interface Window {
    tinwrightReadKitchen?: typeof readKitchen;
    tinwrightReadOrder?: typeof readOrder;
    tinwrightReadPrices?: typeof readPrices;
    tinwrightKitchenFile?: { kitchenYaml: typeof kitchenYaml; openedText: typeof openedText };
  }
}

type Published = Pick<PlannerContent, 'kitchen' | 'outlines' | 'ingredients' | 'finishes'>;

/** What a kitchen.yaml may say beside the kitchen itself. */
export type OpenedSettings = Partial<
  Pick<PlannerContent, 'finishing' | 'altitudeM' | 'portionSizes' | 'currency' | 'house'>
>;

/** What is said wins, what is not stays as published; but nobody's address goes onto another kitchen's labels. */
function settingsOf(
  text: string,
  extras: KitchenExtras,
  kitchen: Kitchen,
  { kitchen: published, ingredients, finishes }: Published,
): OpenedSettings {
  const said = new Set(Object.keys(parse(text) as Record<string, unknown>));
  const { finishing, altitudeM, portionSizes, costs, work, times, business } = extras;
  const where = <T extends object>(keys: readonly string[], settings: T): T | object =>
    keys.some((key) => said.has(key)) ? settings : {};
  const label = () =>
    extras.label({ tins: names(kitchen.tins), finishes: names(finishes), ingredients: names(ingredients) });
  return {
    ...where(['finishing'], { finishing }),
    ...where(['altitude'], { altitudeM }),
    ...where(['portion_sizes'], { portionSizes }),
    ...where(['currency'], { currency: costs.currency }),
    house: {
      ...where(['time_zone', 'working_day', 'hands', 'batter_stands', 'two_people_lift_above'], { work }),
      ...where(['times'], { times }),
      ...(said.has('label') ? { label: label() } : {}),
      ...(said.has('business') || kitchen.name !== published.name ? { business } : {}),
    },
  };
}

export interface ReadKitchen {
  /** Null when anything in the file is wrong. */
  kitchen: Kitchen | null;
  settings: OpenedSettings;
  problems: Problem[];
}

/** The published drawings; one without a size of its own comes by a published tin that gave it one. */
function drawingsOf({ outlines, kitchen }: Published): Drawings {
  const scaled = kitchen.tins.flatMap(({ shape }): [string, OutlineDrawing][] =>
    shape.kind === 'outline'
      ? [[shape.outlineId, { id: shape.outlineId, outline: shape.outline, sized: false }]]
      : [],
  );
  const sized = outlines.map(({ id, outline }) => [id, { id, outline, sized: true }] as const);
  return new Map([...scaled, ...sized]);
}

/** As the build reads it; drawings, ingredients and finishes are the published kitchen's. */
export function readKitchen(text: string, published: Published): ReadKitchen {
  const { kitchen, extras, problems } = parseKitchenYaml(text, 'kitchen.yaml', drawingsOf(published));
  if (kitchen === null || extras === null) return { kitchen: null, settings: {}, problems };
  return { kitchen, settings: settingsOf(text, extras, kitchen, published), problems };
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
  window.tinwrightKitchenFile = { kitchenYaml, openedText };
}
