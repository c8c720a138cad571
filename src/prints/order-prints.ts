/** The prints of orders, in every paper of the kitchen: sheet, shopping list and quote; and the lists of whole weeks. */
import type { Content } from '../domain/content.ts';
import type { OrderView } from '../views/order.types.ts';
import { ordersView } from '../views/orders.ts';
import type { WeekView } from '../views/week.types.ts';
import type { Printable, WantedSource } from './catalogue.ts';
import { daySheetPrint } from './day-sheet.ts';
import { orderSheetPrint } from './order-sheet.ts';
import { ovenPlanPrint } from './oven-plan.ts';
import { quotePrint } from './quote.ts';
import type { Print } from './sheet/surface.ts';
import { shoppingListPrint } from './shopping-list.ts';
import { isStacked, stackSheetPrint } from './stack-sheet.ts';
import { supportTemplatePrint } from './support-template.ts';
import { weekSheetPrint } from './week-sheet.ts';

const isWanted = (id: string, orderIds: readonly string[] | null): boolean =>
  orderIds === null || orderIds.includes(id);

const wantedOrders = ({ content, orderIds }: WantedSource): OrderView[] =>
  ordersView(content).orders.filter(({ id }) => isWanted(id, orderIds));

/** Weeks with at least one order that is wanted; what they share is told whole. */
const wantedWeeks = ({ content, orderIds }: WantedSource): WeekView[] =>
  ordersView(content).weeks.filter(({ orders }) => orders.some(({ id }) => isWanted(id, orderIds)));

/** A code on a sheet leads to the order's page only where that page is public. */
const codeFor = ({ kitchen, publishesOrders }: Content): { siteUrl?: string } =>
  publishesOrders && kitchen.siteUrl !== undefined ? { siteUrl: kitchen.siteUrl } : {};

const onEach = (source: WantedSource, draw: (paper: 'A4' | 'Letter') => Print[]): Print[] =>
  source.content.kitchen.paper.flatMap(draw);

const orderSheets: Printable = {
  kind: 'order-sheet',
  prints: (source) =>
    onEach(source, (paper) => {
      const { content, style, metrics } = source;
      const { locale } = content.kitchen;
      return [
        ...wantedWeeks(source).map((week) => weekSheetPrint(week, style, metrics, paper, locale)),
        ...wantedOrders(source).map((view) =>
          orderSheetPrint(view, style, metrics, paper, locale, codeFor(content)),
        ),
      ];
    }),
};

/** The stack's sheet, and the template that its supports are marked by. */
const stackSheets: Printable = {
  kind: 'stack-sheet',
  prints: (source) =>
    onEach(source, (paper) => {
      const { content, style, metrics } = source;
      const { locale } = content.kitchen;
      return wantedOrders(source)
        .filter(isStacked)
        .flatMap((view) => [
          stackSheetPrint(view, style, metrics, paper, locale, codeFor(content)),
          supportTemplatePrint(view, style, metrics, paper, locale),
        ]);
    }),
};

const shoppingLists: Printable = {
  kind: 'shopping-list',
  prints: (source) =>
    onEach(source, (paper) => {
      const { content, style, metrics } = source;
      const { locale } = content.kitchen;
      return [...wantedWeeks(source), ...wantedOrders(source)].map((of) =>
        shoppingListPrint(of.shopping, of, style, metrics, paper, locale),
      );
    }),
};

/** Where nothing is priced there is nothing to quote. */
const quotes: Printable = {
  kind: 'quote',
  prints: (source) =>
    onEach(source, (paper) => {
      const { content, style, metrics } = source;
      const { locale } = content.kitchen;
      return wantedOrders(source)
        .filter(({ cost }) => cost.price.value > 0)
        .map((view) => quotePrint(view, style, metrics, paper, locale));
    }),
};

/** Days of a week, and of each order that is wanted. */
const daySheets: Printable = {
  kind: 'day-sheet',
  prints: (source) =>
    onEach(source, (paper) => {
      const { content, style, metrics, orderIds } = source;
      const weekIds = wantedWeeks(source).map(({ id }) => id);
      return ordersView(content)
        .timetables.filter(({ orderId, weekId }) =>
          orderId === null ? weekIds.includes(weekId) : isWanted(orderId, orderIds),
        )
        .map(({ view }) => daySheetPrint(view, style, metrics, paper, content.kitchen.locale));
    }),
};

/** The oven is the week's: its loads hold several orders. */
const ovenPlans: Printable = {
  kind: 'oven-plan',
  prints: (source) =>
    onEach(source, (paper) => {
      const { content, style, metrics } = source;
      const weekIds = wantedWeeks(source).map(({ id }) => id);
      return ordersView(content)
        .timetables.filter(({ orderId, weekId }) => orderId === null && weekIds.includes(weekId))
        .map(({ view }) => ovenPlanPrint(view.ovenPlan, style, metrics, paper, content.kitchen.locale));
    }),
};

export const orderPrintables: readonly Printable[] = [
  orderSheets,
  stackSheets,
  shoppingLists,
  quotes,
  daySheets,
  ovenPlans,
];
