/** The order sheet and the labels of one order, by the views and prints that the build makes them with. */

import type { Content } from '../domain/content.ts';
import { NO_COSTS } from '../domain/costs.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { PaperName } from '../domain/kitchen.ts';
import { labelPrints } from '../prints/label-prints.ts';
import { orderSheetPrint } from '../prints/order-sheet.ts';
import type { Metrics, Print } from '../prints/sheet/surface.ts';
import { inHomeUnits } from '../views/home-units.ts';
import { orderLabels } from '../views/label-orders.ts';
import { ordersView } from '../views/orders.ts';
import type { OrderHouse, PlannerContent } from '../views/planner-content.ts';
import type { ReadOrder } from './kitchen-reader.ts';

/** A kitchen with this order alone. Prices are not on the device, and on neither print. */
export function orderContent(
  content: PlannerContent,
  { labelled, ...house }: OrderHouse,
  houseStyle: HouseStyle,
  { order, week }: ReadOrder,
): Content {
  return {
    ...content,
    ...house,
    ...content.house,
    ingredients: content.ingredients.map((item) => ({ ...item, ...labelled[item.id] })),
    orders: [order],
    weeks: [week],
    stock: [],
    costs: NO_COSTS,
    houseStyle,
    houseStyles: [],
    pages: [],
    // Its page is on no site, so that no code on the sheet leads there.
    publishesOrders: false,
  };
}

export function orderSheets(content: Content, metrics: Metrics, paper: PaperName): Print[] {
  const { houseStyle, kitchen } = content;
  return inHomeUnits(ordersView(content), kitchen).orders.map((view) =>
    orderSheetPrint(view, houseStyle, metrics, paper, kitchen.locale),
  );
}

export interface LabelSheets {
  prints: Print[];
  /** Why a cake has no label, as the build tells it. */
  refusals: string[];
}

export function orderLabelSheets(content: Content, metrics: Metrics, paper: PaperName): LabelSheets {
  const { houseStyle: style, kitchen, label } = content;
  const of = orderLabels(content);
  return {
    prints: of.flatMap(({ orderId, labels }) =>
      labelPrints({
        ...{ sizes: label.sizes, style, metrics, papers: [paper], lang: kitchen.locale },
        prefix: `orders/${orderId}-`,
        labels: labels.flatMap(({ view, copies }) => (view === null ? [] : [{ view, copies }])),
      }),
    ),
    refusals: of.flatMap(({ labels }) =>
      labels.flatMap(({ foodName, refusals }) =>
        refusals.map(({ text, hint }) => `${foodName}: ${text} ${hint}`.trim()),
      ),
    ),
  };
}
