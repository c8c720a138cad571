/** Orders on the site: the list by weeks, a page for each order from settling to hand-over, a page for each week. */
import type { Content } from '../domain/content.ts';
import { type BuiltFile, filesByOrder, isOfOrders } from '../views/downloads.ts';
import { inHomeUnits } from '../views/home-units.ts';
import {
  finishPath,
  orderPath,
  type PageHead,
  type PageLink,
  pageHead,
  recipePath,
  weekPath,
} from '../views/nav.ts';
import type { BatterView, Bowlful, OrderDummy, OrderTier, OrderView } from '../views/order.types.ts';
import { intoText } from '../views/order-batters.ts';
import { finishTitle } from '../views/order-finishes.ts';
import { type OrdersView, ordersView } from '../views/orders.ts';
import type { WeekView } from '../views/week.types.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { lazyPage } from './lazy-page.ts';
import { markdownHtml } from './markdown.ts';
import { type FileGroup, fileGroups, type StepFiles, stepFilesOf } from './order-files.ts';
import { type PaperPart, paperPart } from './order-papers-part.ts';
import { type StackPart, stackPart } from './stack-part.ts';
import { type TimetablePart, timetablePart } from './timetable-part.ts';

export interface OrdersPage {
  head: PageHead;
  words: OrderWords;
  weeks: {
    id: string;
    title: string;
    rangeText: string;
    path: string;
    orders: { title: string; path: string; reference: string; when: string; summary: string }[];
  }[];
}

/** A batter with its sentences ready to write. */
type BatterPart = Omit<BatterView, 'bowlfuls'> & {
  recipePath: string;
  bowlfuls: (Bowlful & { title: string; eggTexts: string[]; tinTexts: string[] })[];
};

type Covered<T> = T & { nameText: string; rollTexts: string[] };

export interface OrderPage extends OrderPageRest {
  head: PageHead;
}

/** What is put together when the page is read: a year of orders is not held as pages. */
interface OrderPageRest extends StackPart {
  words: OrderWords;
  order: OrderView;
  week: PageLink;
  files: FileGroup[];
  /** The same, where they are wanted: by the anchor of the step. */
  stepFiles: StepFiles;
  steps: PageLink[];
  tiers: Covered<OrderTier>[];
  dummies: Covered<OrderDummy>[];
  batters: BatterPart[];
  papers: PaperPart[];
  finishes: (OrderView['finishes'][number] & { titleText: string; path: string; methodHtml: string })[];
  notesHtml: string;
  timetable: TimetablePart | null;
}

const ORDER_PARTS = [
  ...(['words', 'order', 'week', 'files', 'stepFiles', 'steps', 'tiers', 'dummies', 'batters'] as const),
  ...(['papers', 'finishes', 'notesHtml', 'timetable', 'stackDrawing', 'stackWords'] as const),
] as const satisfies readonly (keyof OrderPageRest)[];

export interface WeekPage extends WeekPageRest {
  head: PageHead;
}

interface WeekPageRest {
  words: OrderWords;
  week: WeekView;
  files: FileGroup[];
  stepFiles: StepFiles;
  steps: PageLink[];
  orders: (WeekView['orders'][number] & { path: string })[];
  batters: BatterPart[];
  timetable: TimetablePart | null;
}

const WEEK_PARTS = [
  ...(['words', 'week', 'files', 'stepFiles', 'steps', 'orders', 'batters', 'timetable'] as const),
] as const satisfies readonly (keyof WeekPageRest)[];

export interface OrderPages {
  orders: OrdersPage[];
  orderPages: OrderPage[];
  weekPages: WeekPage[];
}

const SHEETS = ['orders.css'];

/** The files that the page of an order or a week may name. */
type FilesOf = (id: string) => readonly BuiltFile[];

function listPage({ orders, weeks }: OrdersView, words: OrderWords): OrdersPage {
  return {
    head: pageHead({
      path: 'orders.html',
      text: words.orders,
      description: words.ordersLead,
      section: 'orders',
      sheets: SHEETS,
    }),
    words,
    weeks: weeks.map((week) => ({
      id: week.id,
      title: week.title,
      rangeText: week.rangeText,
      path: weekPath(week.id),
      orders: orders
        .filter(({ weekId }) => weekId === week.id)
        .map(({ id, title, reference, handOver, summary }) => ({
          title,
          path: orderPath(id),
          reference,
          when: handOver.text,
          summary,
        })),
    })),
  };
}

const jumps = (entries: readonly [string, string][]): PageLink[] =>
  entries.map(([anchor, text]) => ({ path: `#${anchor}`, text }));

function orderSteps({ steps, page, papers }: OrderWords, hasFiles: boolean): PageLink[] {
  const done = [
    ['settle', steps.settle],
    ['shop', steps.shop],
    ['mix', steps.mix],
    ['bake', steps.bake],
    ['finish', steps.finish],
    ['pack', steps.pack],
    ['hand-over', steps.handOver],
  ] as const;
  return jumps([
    ['take', papers.title],
    ...done.map(([anchor, text], at): [string, string] => [anchor, steps.numbered(at + 1, text)]),
    ['when', page.when],
    ['money', steps.money],
    ...(hasFiles ? [['files', page.toPrint] as [string, string]] : []),
  ]);
}

function batterPart(batter: BatterView, days: readonly string[], words: OrderWords): BatterPart {
  return {
    ...batter,
    recipePath: recipePath(batter.recipe.id),
    bowlfuls: batter.bowlfuls.map((bowl, at) => ({
      ...bowl,
      title: days[at] === undefined ? bowl.name : `${bowl.name}. ${days[at]}`,
      eggTexts: bowl.eggs.map(({ partText, grams }) => words.sheet.beaten(partText, grams.text)),
      tinTexts: bowl.tins.map((tin) => intoText(tin, words)),
    })),
  };
}

const coveredPart = <T extends OrderTier | OrderDummy>(tier: T, words: OrderWords): Covered<T> => ({
  ...tier,
  nameText: tier.countedName,
  rollTexts: tier.finishes.map(({ sheetText, make }) =>
    sheetText === null ? '' : words.sheet.rollTo(sheetText, make.text),
  ),
});

function orderPage(
  order: OrderView,
  view: OrdersView,
  content: Content,
  filesOf: FilesOf,
  words: OrderWords,
): OrderPage {
  const head = pageHead({
    path: orderPath(order.id),
    text: order.title,
    description: words.page.description(order.title),
    section: 'orders',
    sheets: SHEETS,
  });
  return lazyPage({ head }, ORDER_PARTS, () => orderPageRest(order, view, content, filesOf(order.id), words));
}

function orderPageRest(
  order: OrderView,
  view: OrdersView,
  content: Content,
  files: readonly BuiltFile[],
  words: OrderWords,
): OrderPageRest {
  const timetable = view.timetables.find(({ orderId }) => orderId === order.id);
  const groups = fileGroups(order.id, files, words, content.kitchen);
  return {
    words,
    order,
    week: { path: weekPath(order.weekId), text: words.page.ofWeek(order.weekId) },
    files: groups,
    stepFiles: stepFilesOf(groups),
    steps: orderSteps(words, groups.length > 0),
    tiers: order.tiers.map((tier) => coveredPart(tier, words)),
    dummies: order.dummies.map((dummy) => coveredPart(dummy, words)),
    batters: order.batters.map((batter) => batterPart(batter, [], words)),
    papers: order.papers.map((paper) => paperPart(paper, files, content.kitchen)),
    finishes: order.finishes.map((finish) => ({
      ...finish,
      titleText: finishTitle(finish, words),
      path: finishPath(finish.finish.id),
      methodHtml: markdownHtml(finish.methodMarkdown, 3),
    })),
    notesHtml: order.notes === '' ? '' : markdownHtml(order.notes, 2),
    timetable: timetable === undefined ? null : timetablePart(timetable.view, content.kitchen.locale),
    ...stackPart(order, content, words),
  };
}

function weekPage(
  week: WeekView,
  view: OrdersView,
  content: Content,
  filesOf: FilesOf,
  words: OrderWords,
): WeekPage {
  const head = pageHead({
    path: weekPath(week.id),
    text: week.title,
    description: words.page.weekDescription(week.id),
    section: 'orders',
    sheets: SHEETS,
  });
  return lazyPage({ head }, WEEK_PARTS, () => weekPageRest(week, view, content, filesOf(week.id), words));
}

function weekPageRest(
  week: WeekView,
  view: OrdersView,
  content: Content,
  files: readonly BuiltFile[],
  words: OrderWords,
): WeekPageRest {
  const timetable = view.timetables.find(({ orderId, weekId }) => orderId === null && weekId === week.id);
  const groups = fileGroups(week.id, files, words, content.kitchen);
  return {
    words,
    week,
    files: groups,
    stepFiles: stepFilesOf(groups),
    steps: jumps([
      ['orders', words.week.orders],
      ['shop', words.week.shopping],
      ['mix', words.week.mixes],
      ['when', words.page.when],
      ['oven', words.page.ovenPlan],
    ]),
    orders: week.orders.map((order) => ({ ...order, path: orderPath(order.id) })),
    batters: week.batters.map((batter) => batterPart(batter, batter.mixedOnTexts, words)),
    timetable: timetable === undefined ? null : timetablePart(timetable.view, content.kitchen.locale),
  };
}

/** The pages of orders; none where the kitchen keeps them to itself, or has none. */
export function orderPages(content: Content, files: readonly BuiltFile[]): OrderPages {
  if (!content.publishesOrders || content.orders.length === 0)
    return { orders: [], orderPages: [], weekPages: [] };
  const view = inHomeUnits(ordersView(content), content.kitchen);
  const words = orderWordsFor(content.kitchen.locale);
  const byOrder = filesByOrder(
    [...view.orders, ...view.weeks].map(({ id }) => id),
    files,
  );
  const others = files.filter((file) => !isOfOrders(file));
  const filesOf: FilesOf = (id) => [...others, ...(byOrder.get(id.toLowerCase()) ?? [])];
  return {
    orders: [listPage(view, words)],
    orderPages: view.orders.map((order) => orderPage(order, view, content, filesOf, words)),
    weekPages: view.weeks.map((week) => weekPage(week, view, content, filesOf, words)),
  };
}
