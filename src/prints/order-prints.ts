/** The prints of orders, in every paper of the kitchen: sheet, shopping list and quote; and the lists of whole weeks. */
import type { Content } from '../domain/content.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { inHomeUnits } from '../views/home-units.ts';
import type { OrderView } from '../views/order.types.ts';
import { type OrdersView, ordersView } from '../views/orders.ts';
import type { TimetableView } from '../views/timetable/timetable.types.ts';
import type { WeekView } from '../views/week.types.ts';
import type { WantedSource } from './catalogue.ts';
import { costingPrint } from './costing.ts';
import { daySheetPrint } from './day-sheet.ts';
import { orderSheetPrint } from './order-sheet.ts';
import { ovenPlanPrint } from './oven-plan.ts';
import { type Printable, printable } from './printable.ts';
import { quotePrint } from './quote.ts';
import { shoppingListPrint } from './shopping-list.ts';
import { isStacked, type StackedOrder, stackSheetPrint } from './stack-sheet.ts';
import { supportTemplatePrint } from './support-template.ts';
import { weekSheetPrint } from './week-sheet.ts';

/** Orders and weeks in the units of the kitchen's country. */
const shownOrders = (content: Content): OrdersView => inHomeUnits(ordersView(content), content.kitchen);

const isWanted = (id: string, orderIds: readonly string[] | null): boolean =>
  orderIds === null || orderIds.includes(id);

const wantedOrders = ({ content, orderIds }: WantedSource): OrderView[] =>
  shownOrders(content).orders.filter(({ id }) => isWanted(id, orderIds));

/** Weeks with at least one order that is wanted; what they share is told whole. */
const wantedWeeks = ({ content, orderIds }: WantedSource): WeekView[] =>
  shownOrders(content).weeks.filter(({ orders }) => orders.some(({ id }) => isWanted(id, orderIds)));

/** A code on a sheet leads to the order's page only where that page is public. */
const codeFor = ({ kitchen, publishesOrders }: Content): { siteUrl?: string } =>
  publishesOrders && kitchen.siteUrl !== undefined ? { siteUrl: kitchen.siteUrl } : {};

interface OrderPaper<View> {
  view: View;
  paper: PaperName;
  lang: Locale;
}

/** All views on each paper of the kitchen, paper by paper. */
const onEach = <View>({ content }: WantedSource, views: readonly View[]): OrderPaper<View>[] => {
  const { paper: papers, locale: lang } = content.kitchen;
  return papers.flatMap((paper) => views.map((view) => ({ view, paper, lang })));
};

const orderSheets = printable<
  OrderPaper<{ week: WeekView } | { order: OrderView; code: { siteUrl?: string } }>
>({
  kind: 'order-sheet',
  inputs: (source) => {
    const code = codeFor(source.content);
    return onEach(source, [
      ...wantedWeeks(source).map((week) => ({ week })),
      ...wantedOrders(source).map((order) => ({ order, code })),
    ]);
  },
  draw: ({ view, paper, lang }, style, metrics) => [
    'week' in view
      ? weekSheetPrint(view.week, style, metrics, paper, lang)
      : orderSheetPrint(view.order, style, metrics, paper, lang, view.code),
  ],
});

/** The stack's sheet, and the template that its supports are marked by. */
const stackSheets = printable<OrderPaper<{ order: OrderView & StackedOrder; code: { siteUrl?: string } }>>({
  kind: 'stack-sheet',
  inputs: (source) => {
    const code = codeFor(source.content);
    return onEach(
      source,
      wantedOrders(source)
        .filter(isStacked)
        .map((order) => ({ order, code })),
    );
  },
  draw: ({ view: { order, code }, paper, lang }, style, metrics) => [
    stackSheetPrint(order, style, metrics, paper, lang, code),
    // Dummies below all else leave nothing to prick.
    ...(order.stack.sets.length === 0 ? [] : [supportTemplatePrint(order, style, metrics, paper, lang)]),
  ],
});

const shoppingLists = printable<OrderPaper<Pick<OrderView, 'shopping' | 'kitchenName' | 'edition'>>>({
  kind: 'shopping-list',
  inputs: (source) =>
    onEach(
      source,
      [...wantedWeeks(source), ...wantedOrders(source)].map(({ shopping, kitchenName, edition }) => ({
        shopping,
        kitchenName,
        edition,
      })),
    ),
  draw: ({ view, paper, lang }, style, metrics) => [
    shoppingListPrint(view.shopping, view, style, metrics, paper, lang),
  ],
});

/** Where nothing is priced there is nothing to quote; where nobody orders there is a costing. */
const quotes = printable<OrderPaper<OrderView>>({
  kind: 'quote',
  inputs: (source) =>
    onEach(
      source,
      wantedOrders(source).filter(({ cost }) => cost.price.value > 0),
    ),
  draw: ({ view, paper, lang }, style, metrics) => [
    (view.quote.kind === 'costing' ? costingPrint : quotePrint)(view, style, metrics, paper, lang),
  ],
});

/** Days of a week, and of each order that is wanted. */
const daySheets = printable<OrderPaper<TimetableView>>({
  kind: 'day-sheet',
  inputs: (source) => {
    const weekIds = wantedWeeks(source).map(({ id }) => id);
    const wanted = shownOrders(source.content).timetables.filter(({ orderId, weekId }) =>
      orderId === null ? weekIds.includes(weekId) : isWanted(orderId, source.orderIds),
    );
    return onEach(
      source,
      wanted.map(({ view }) => view),
    );
  },
  draw: ({ view, paper, lang }, style, metrics) => [daySheetPrint(view, style, metrics, paper, lang)],
});

/** The oven is the week's: its loads hold several orders. */
const ovenPlans = printable<OrderPaper<TimetableView['ovenPlan']>>({
  kind: 'oven-plan',
  inputs: (source) => {
    const weekIds = wantedWeeks(source).map(({ id }) => id);
    const wanted = shownOrders(source.content).timetables.filter(
      ({ orderId, weekId }) => orderId === null && weekIds.includes(weekId),
    );
    return onEach(
      source,
      wanted.map(({ view }) => view.ovenPlan),
    );
  },
  draw: ({ view, paper, lang }, style, metrics) => [ovenPlanPrint(view, style, metrics, paper, lang)],
});

export const orderPrintables: readonly Printable[] = [
  orderSheets,
  stackSheets,
  shoppingLists,
  quotes,
  daySheets,
  ovenPlans,
];
