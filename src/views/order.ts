/** An order as plain data, from what was agreed to what is handed over. */

import { hasRawEggGlaze, hasRawWhite } from '../compute/finishes/raw-white.ts';
import { orderBoards } from '../compute/orders/order-boards.ts';
import { orderStack } from '../compute/orders/order-stack.ts';
import type { PlannedOrder } from '../compute/orders/plan-order.ts';
import { stackPieces } from '../compute/orders/stack-pieces.ts';
import { batterName, mixesOfOrder } from '../compute/orders/work-of.ts';
import type { PlannedWeek } from '../compute/weeks/plan-week.ts';
import type { Content } from '../domain/content.ts';
import { isStacked } from '../domain/order.ts';
import type { Warning } from '../domain/problem.ts';
import { formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { stackWordsFor } from '../wording/stacks/index.ts';
import type { Caution } from './figure.ts';
import { heightFigure, totalFigure } from './figures.ts';
import { keptBackOf } from './label-orders.ts';
import type { DecisionView, HandOverView, KeepingView, OrderFact, OrderView } from './order.types.ts';
import { orderAllergens } from './order-allergens.ts';
import { batterViews, countFigure } from './order-batters.ts';
import { orderCostView } from './order-cost.ts';
import { orderFinishes } from './order-finishes.ts';
import { handOverView } from './order-hand-over.ts';
import { hiredThings } from './order-hired.ts';
import { besideTexts, dummyName, orderSummary, tierName } from './order-names.ts';
import { orderPapers } from './order-papers.ts';
import { orderDummies, orderTiers } from './order-tiers.ts';
import type { WorkedOrder } from './planned-orders.ts';
import { quoteView } from './quote.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import { shoppingView } from './shopping.ts';
import { stackView } from './stack-sheet.ts';

const KG_G = 1000;

function portionsText({ order, portions, portionsOver }: PlannedOrder, words: OrderWords): string {
  const size = words.sizeNames[order.portions?.size ?? 'dessert'];
  const own = words.portionsOf(String(portions), size);
  const kept = order.keepsTopTier ? `; ${words.keptTop}` : '';
  if (order.portions === undefined || portionsOver === null) return `${own}${kept}`;
  const wanted = words.portionsWanted(String(order.portions.wanted), words.portionsOver(portionsOver));
  return `${own} (${wanted})${kept}`;
}

/** One cake by itself stands neither beside another nor on one. */
const isOneCake = ({ tiers: [first, ...others], dummies }: PlannedOrder): boolean =>
  first !== undefined && others.length + dummies.length === 0 && first.count === 1;

function factsOf(planned: PlannedOrder, handOver: HandOverView, words: OrderWords): OrderFact[] {
  const { order, weightG, heightMm } = planned;
  const beside = besideTexts(order, words);
  const fact = (id: keyof OrderWords['facts'], text: string): OrderFact => ({
    id,
    label: words.facts[id],
    text,
  });
  return [
    fact('reference', order.reference),
    fact('handOver', handOver.text),
    fact('place', handOver.placeText),
    fact('portions', portionsText(planned, words)),
    ...(isOneCake(planned)
      ? []
      : [fact('arrangement', words.arrangement(order.arrangement === 'stacked', order.travelsAssembled))]),
    ...(beside.length === 0
      ? []
      : [{ id: 'beside', label: words.beside.besideFact, text: beside.join('; ') }]),
    fact('height', formatLength(heightMm, 'cm')),
    fact('weight', `${formatNumber(weightG / KG_G, 1)}\u00a0kg`),
  ];
}

function decisionsOf({ order }: PlannedOrder, words: OrderWords): DecisionView[] {
  return order.decisions.map(({ question, answer, by }) => ({
    question,
    answer,
    byText: by === undefined ? null : words.date(by),
  }));
}

function cautionsOf(
  planned: PlannedOrder,
  inedible: readonly string[],
  hired: readonly string[],
  content: Content,
): Caution[] {
  const words = orderWordsFor(content.kitchen.locale);
  const { cautions } = words;
  const { order, finishes, weightG } = planned;
  const { and } = wordsFor(content.kitchen.locale);
  const { liftTwoAboveG } = content.work;
  const stacked = isStacked(order);
  return [
    { code: 'raw-batter', text: cautions.raw },
    { code: 'hot-tins', text: cautions.hot },
    { code: 'cool', text: cautions.cool },
    ...(finishes.some(({ finish }) => finish.chilled && finish.kind !== 'syrup')
      ? [{ code: 'chilled', text: cautions.chilled }]
      : []),
    ...(finishes.some(hasRawWhite) ? [{ code: 'raw-white', text: cautions.rawWhite }] : []),
    ...(finishes.some(hasRawEggGlaze) ? [{ code: 'raw-glaze', text: cautions.rawGlaze }] : []),
    ...(stacked ? [{ code: 'supports', text: cautions.supports }] : []),
    ...(stacked || weightG > liftTwoAboveG
      ? [{ code: 'heavy', text: cautions.heavy(formatNumber(liftTwoAboveG / KG_G, 1)) }]
      : []),
    ...(inedible.length === 0
      ? []
      : [{ code: 'inedible', text: cautions.inedible(listInWords(inedible.map(uncapitalised), and)) }]),
    ...(hired.length === 0
      ? []
      : [{ code: 'hired', text: cautions.hired(listInWords(hired.map(uncapitalised), and)) }]),
    ...keptCautions(planned, content),
    ...dummyCautions(planned, words, and),
  ];
}

/** How the tier that is kept for another day is wrapped and kept. */
function keptCautions(planned: PlannedOrder, content: Content): Caution[] {
  const { cautions, date } = orderWordsFor(content.kitchen.locale);
  return planned.tiers.flatMap((tier): Caution[] => {
    const kept = keptBackOf(planned, tier, content);
    if (kept === null) return [];
    const { frozen, asItIs, notKept } = cautions.kept;
    if (kept.how === 'frozen')
      return [{ code: 'kept-back', text: frozen(date(kept.freezeOn), date(kept.eatBy)) }];
    return [{ code: 'kept-back', text: kept.how === 'unfrozen' ? asItIs : notKept }];
  });
}

/** A dummy looks like cake: whoever cuts it has to be told. */
function dummyCautions(planned: PlannedOrder, words: OrderWords, and: string): Caution[] {
  const { dummies } = planned;
  if (dummies.length === 0) return [];
  const names = dummies.map(({ at }) => uncapitalised(dummyName(planned, at, words)));
  const hired = dummies.some(({ ask }) => ask.supply === 'hired');
  return [{ code: 'dummy', text: words.beside.dummyCaution(listInWords(names, and), hired) }];
}

/** Which of the order's batters the week plans with others'; their weights differ even where a bowl is the order's own. */
function sharedText({ order }: PlannedOrder, week: PlannedWeek, { kitchen }: Content): string | null {
  const shared = week.mixes.filter(
    ({ tiers }) =>
      tiers.some(({ orderId }) => orderId === order.id) && tiers.some(({ orderId }) => orderId !== order.id),
  );
  if (shared.length === 0) return null;
  const words = orderWordsFor(kitchen.locale);
  const { and } = wordsFor(kitchen.locale);
  const others = new Set(shared.flatMap(({ tiers }) => tiers.map(({ orderId }) => orderId)));
  const titles = week.orders.flatMap((other) =>
    others.has(other.order.id) && other.order.id !== order.id ? [other.order.reference] : [],
  );
  return words.week.sharedWith(
    week.week.id,
    listInWords(shared.map(batterName), and),
    listInWords(titles, and),
  );
}

/** A cake that has no label is told where the order is worked from, not only left out of the sheet of labels. */
const withoutLabel = (keeping: readonly KeepingView[], words: OrderWords): Warning[] =>
  keeping.flatMap(({ foodName, refusals }) =>
    refusals.map((why) => ({ code: 'no-label', message: words.page.keeping.none(foodName, why) })),
  );

/** Supports that no paper can count are told where the order is worked from. */
const uncountedSupports = (tins: readonly string[], { kitchen }: Content): Warning[] =>
  tins.length === 0
    ? []
    : [{ code: 'supports-uncounted', message: stackWordsFor(kitchen.locale).supportsByHand(tins) }];

/** The view of a worked order. */
export function orderView(
  { planned, week, shopping, effort, cost }: WorkedOrder,
  together: PlannedWeek | undefined,
  keeping: readonly KeepingView[],
  content: Content,
  bakes: ReadonlyMap<string, RecipeBakes>,
): OrderView {
  const { order, portions } = planned;
  const { kitchen } = content;
  const words = orderWordsFor(kitchen.locale);
  const handOver = handOverView(order, week, content);
  const stack = orderStack(planned, content.finishing);
  const boards = orderBoards(planned, content.finishing);
  const tiers = orderTiers(planned, content, bakes, boards);
  const allergens = orderAllergens(planned, content);
  const dummies = orderDummies(planned, content, boards);
  const inedible = [
    ...order.extras.filter((extra) => extra.inedible).map(({ name }) => name),
    ...dummies.map(({ name }) => name),
  ];
  const hired = hiredThings(planned, words);
  const sharesShelf = (together?.orders.length ?? 1) > 1;
  const unpriced = shopping.lines.flatMap(({ name, usedMinor, unit }) =>
    usedMinor === null && unit !== 'pieces' ? [name.toLowerCase()] : [],
  );
  const text = portionsText(planned, words);
  const head = { title: order.title, reference: order.reference };
  const told = {
    id: order.id,
    ...head,
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    weekId: week.id,
    summary: orderSummary(planned, text, words),
    handOver,
    facts: factsOf(planned, handOver, words),
    tiers,
    dummies,
    batters: batterViews(mixesOfOrder(planned), {
      kitchen,
      ingredients: content.ingredients,
      nameOf: ({ tierAt }) => tierName(planned, tierAt, words),
      tierOf: ({ tierAt }) => planned.tiers[tierAt],
    }),
    sharedText: together === undefined ? null : sharedText(planned, together, content),
    finishes: orderFinishes(planned, content),
    decisions: decisionsOf(planned, words),
    inedible,
    hired,
    signLines: words.sheet.signLines(
      inedible.length > 0 || (stack !== null && stack !== 'unknown-width'),
      hired.length > 0,
    ),
    stack: stack === null || stack === 'unknown-width' ? null : stackView(planned, stack, content),
    noStackText: stack === 'unknown-width' ? stackWordsFor(kitchen.locale).unknownWidth : null,
    allergens,
    keeping: [...keeping],
    portions: countFigure(portions),
    portionsWanted: order.portions === undefined ? null : countFigure(order.portions.wanted),
    weight: totalFigure(planned.weightG),
    height: heightFigure(planned.heightMm),
    shopping: shoppingView(order.id, words.shopping.forOrder(order.title), shopping, content, sharesShelf),
    cost: orderCostView(cost, effort, { unpriced, uncounted: shopping.uncounted }, content),
    quote: quoteView(
      cost,
      { ...head, handOver, tiers, dummies, allergens, portionsText: text, portions, asked: order },
      content,
    ),
    notes: order.notes,
    cautions: cautionsOf(planned, inedible, hired, content),
    warnings: [
      ...planned.warnings,
      ...uncountedSupports(stackPieces(planned).uncounted, content),
      ...withoutLabel(keeping, words),
    ],
  };
  return { ...told, papers: orderPapers(told, content) };
}
