/** How the cakes of an order are called: by their place in the stack, or by what they are. */
import { isDummyPart, type StackPart } from '../compute/orders/order-stack.ts';
import type { PlannedOrder } from '../compute/orders/plan-order.ts';
import { dummyId } from '../compute/orders/planned-dummy.ts';
import { tierId } from '../compute/orders/work-of.ts';
import { type DummyTier, type Order, stackOf, type TierAsk, tiersOf } from '../domain/order.ts';
import type { OrderWords } from '../wording/orders/index.ts';

type Named = Pick<PlannedOrder, 'order'>;

/** By its place among all tiers, cakes and dummies. */
function placeName(order: Order, part: TierAsk | DummyTier | undefined, words: OrderWords): string {
  const stack = stackOf(order);
  const at = part === undefined ? -1 : stack.indexOf(part);
  return words.tierName(at, stack.length, order.arrangement === 'stacked');
}

/** What stands beside the tiers: numbered where there are several of one kind. */
function besideName({ tiers }: Order, ask: TierAsk, { beside }: OrderWords): string {
  const same = tiers.filter((one) => one.beside === ask.beside && one.small?.kind === ask.small?.kind);
  const number = same.indexOf(ask) + 1;
  if (ask.small === undefined) return beside.cuttingCake(number, same.length);
  const name = beside.small[ask.small.kind];
  return same.length === 1 ? name : beside.smallOf(name, number);
}

/** How a cake of an order is called; `at` is its place among the order's cakes. */
export function tierName({ order }: Named, at: number, words: OrderWords): string {
  const ask = order.tiers[at];
  if (ask === undefined || ask.beside === undefined) return placeName(order, ask, words);
  return besideName(order, ask, words);
}

/** 'Top tier (dummy)'; `at` is its place among the order's dummies. */
export const dummyName = ({ order }: Named, at: number, words: OrderWords): string =>
  words.beside.dummy(placeName(order, order.dummies?.[at], words));

/** The order in one sentence. */
export function orderSummary({ order }: Named, portions: string, { beside }: OrderWords): string {
  const { tiers, dummies = [], arrangement } = order;
  const counted = (some: readonly TierAsk[]): number => some.reduce((sum, { count }) => sum + count, 0);
  return beside.summary({
    stacked: arrangement === 'stacked',
    tiers: counted(tiersOf(order)),
    dummies: dummies.length,
    cuttingCakes: counted(tiers.filter((one) => one.beside === 'cutting cake')),
    small: smallTexts(order, beside),
    portions,
  });
}

/** '24 cupcakes' for every line of small cakes. */
const smallTexts = ({ tiers }: Order, beside: OrderWords['beside']): string[] =>
  tiers.flatMap(({ small, count }) => (small === undefined ? [] : [beside.pieces(count, small.kind)]));

/** What stands beside the tiers, for the facts of an order. */
export function besideTexts(order: Order, { beside }: OrderWords): string[] {
  const cutting = order.tiers.filter((one) => one.beside === 'cutting cake');
  const names = cutting.map((_, at) => beside.cuttingCake(at + 1, cutting.length));
  return [...names, ...smallTexts(order, beside)];
}

/** A tier of the stack by its name, cake or not. */
export const partName = (named: Named, part: StackPart, words: OrderWords): string =>
  (isDummyPart(part) ? dummyName : tierName)(named, part.at, words);

/** 'tier-1' or 'dummy-1'. */
export const partId = (part: StackPart): string => (isDummyPart(part) ? dummyId : tierId)(part.at);
