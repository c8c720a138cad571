/**
 * The labels of an order: one for each kind of cake in it, from what really goes into its mix and onto it. Their
 * days are those of the week's timetable; a week without one leaves them to write by hand.
 */

import { type KeptBack, keptBack } from '../compute/labels/kept-back.ts';
import type { LabelFacts, LabelFinish, LabelInput, WeighedIn } from '../compute/labels/label.ts';
import { spongeKeepsDays, spongeUsual } from '../compute/labels/sponge-usual.ts';
import type { PlannedOrder, PlannedTier } from '../compute/orders/plan-order.ts';
import { tierId } from '../compute/orders/work-of.ts';
import { type TierDays, tierDays } from '../compute/timeline/tier-days.ts';
import type { Content } from '../domain/content.ts';
import type { LabelSettings } from '../domain/label-settings.ts';
import { isStacked, type Order } from '../domain/order.ts';
import { DAY_MIN } from '../domain/times.ts';
import { labelWordsFor } from '../wording/label/index.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { labelOutcome } from './label.ts';
import type { LabelOutcome } from './label.types.ts';
import { labelFoodName } from './label-food-name.ts';
import { sampleLabels } from './label-samples.ts';
import { type WorkedOrder, type WorkedWeek, workedOrders } from './planned-orders.ts';

type OrderLabelContent = Pick<Content, 'kitchen' | 'ingredients' | 'label' | 'business' | 'times'>;

export interface TierLabel extends LabelOutcome {
  /** How many cakes, or boxes of small ones, want it. */
  copies: number;
}

export interface OrderLabels {
  orderId: string;
  labels: TierLabel[];
}

/** What gets a label: a cake, or a box of small ones. */
interface Pack {
  /** Cakes in it. */
  pieces: number;
  copies: number;
  /** After the tier's own name; the last box has fewer than the others. */
  suffix: '' | '-last-box';
}

function packsOf({ count, ask: { small } }: PlannedTier): Pack[] {
  if (small === undefined) return [{ pieces: 1, copies: count, suffix: '' }];
  const [full, last] = [Math.floor(count / small.box), count % small.box];
  return [
    ...(full > 0 ? [{ pieces: small.box, copies: full, suffix: '' as const }] : []),
    ...(last > 0
      ? [{ pieces: last, copies: 1, suffix: full > 0 ? ('-last-box' as const) : ('' as const) }]
      : []),
  ];
}

/** What so many cakes of the tier get of its mix. */
function spongeWeighedIn(
  { mixes }: PlannedOrder,
  { mixAt, receivesG, bakes, level }: PlannedTier,
  { pieces }: Pack,
): WeighedIn[] {
  const mix = mixes[mixAt]?.mix;
  if (mix === undefined || mix.batterG === 0) return [];
  const share = Math.min(1, (pieces * bakes * receivesG * level.keptShare) / mix.batterG);
  return mix.lines.map(({ ingredientId, grams }) => ({ ingredientId, grams: grams * share }));
}

const onEachPack = ({ finishes, count }: PlannedTier, { pieces }: Pack): LabelFinish[] =>
  finishes
    .map(({ finish, use, amount }) => ({ finish, use, onCakeG: (pieces * amount.neededG) / count }))
    .filter(({ onCakeG }) => onCakeG > 0);

/** Supports and dummies of the stack that a tier belongs to, and what was hired or put on for show. */
function inedibleIn({ order }: PlannedOrder, { ask }: PlannedTier, content: OrderLabelContent): string[] {
  const { supports, dummies } = labelWordsFor(content.kitchen.locale);
  const stacked = isStacked(order) && ask.beside === undefined;
  const count = order.dummies?.length ?? 0;
  const extras = order.extras.filter(({ inedible }) => inedible).map(({ name }) => name.toLowerCase());
  return [...(stacked ? [supports] : []), ...(stacked && count > 0 ? [dummies(count)] : []), ...extras];
}

/** Days that the sponge keeps: small cakes dry out first. */
function keepsDays({ recipe, ask }: PlannedTier, { times }: Pick<OrderLabelContent, 'times'>): number {
  const usual = spongeKeepsDays(recipe, times);
  return ask.small === undefined ? usual : Math.min(usual, Math.floor(times.smallKeepsMin / DAY_MIN));
}

/** 'Cupcakes: lemon sponge with vanilla buttercream'. */
function foodName(tier: PlannedTier, { kitchen }: OrderLabelContent): string {
  const food = labelFoodName(tier, kitchen);
  const { small } = tier.ask;
  if (small === undefined) return food;
  return labelWordsFor(kitchen.locale).smallFood(
    orderWordsFor(kitchen.locale).beside.small[small.kind],
    food,
  );
}

/** What is boxed before anyone buys it is prepacked for direct sale, whatever the kitchen usually does. */
function settingsFor({ order }: PlannedOrder, { label }: OrderLabelContent): LabelSettings {
  const atStall = order.handOver.place === 'sold at a stall' && label.sale === 'made to order';
  return atStall ? { ...label, sale: 'prepacked for direct sale' } : label;
}

type Days = Pick<LabelFacts, 'madeOn' | 'bakedOn' | 'finishesMadeOn' | 'handOverOn'>;

function daysOf({ order }: PlannedOrder, days: TierDays | null): Days {
  if (days === null) return { madeOn: null };
  const { finishedOn: madeOn, bakedOn, finishesMadeOn } = days;
  return { madeOn, bakedOn, finishesMadeOn, handOverOn: order.handOver.localTime.slice(0, 10) };
}

/** How a tier is kept for another day; null for any other tier. */
export function keptBackOf(
  { order, tiers }: PlannedOrder,
  tier: PlannedTier,
  content: Pick<OrderLabelContent, 'times'>,
): KeptBack | null {
  const top = tiers.filter(({ ask }) => ask.beside === undefined).at(-1);
  if (!order.keepsTopTier || tier !== top) return null;
  const kinds = tier.finishes.map(({ finish }) => finish.kind);
  return keptBack(order.handOver.localTime.slice(0, 10), keepsDays(tier, content), kinds);
}

function frozenOf(kept: KeptBack | null): Pick<LabelFacts, 'frozen'> {
  if (kept?.how !== 'frozen') return {};
  const { freezeOn, eatBy } = kept;
  return { frozen: { freezeOn, eatBy } };
}

/** The input of a tier's label; of one cake where the tier has several, of one box of small cakes. */
function tierLabelInput(
  planned: PlannedOrder,
  tier: PlannedTier,
  pack: Pack,
  days: TierDays | null,
  content: OrderLabelContent,
): LabelInput {
  const { recipe } = tier;
  const usual = spongeUsual(recipe);
  const portions = pack.pieces * (tier.portionsEach ?? 0);
  return {
    id: `${planned.order.id}-tier-${tier.at + 1}${pack.suffix}`,
    foodName: foodName(tier, content),
    sponges: [
      {
        name: recipe.name,
        formula: spongeWeighedIn(planned, tier, pack),
        waterLossShare: usual.waterLossShare,
        keepsDays: keepsDays(tier, content),
      },
    ],
    finishes: onEachPack(tier, pack),
    ingredients: content.ingredients,
    settings: settingsFor(planned, content),
    business: content.business,
    portions: portions > 0 ? portions : null,
    named: null,
    facts: {
      ...daysOf(planned, days),
      ...frozenOf(keptBackOf(planned, tier, content)),
      inedible: inedibleIn(planned, tier, content),
      reference: planned.order.reference,
    },
  };
}

/** The days of an order's tier by its week's timetable. */
function daysIn(weeks: readonly WorkedWeek[], order: WorkedOrder, tierAt: number): TierDays | null {
  const week = weeks.find(({ planned }) => planned.week === order.week);
  if (week === undefined || !week.plan.ok) return null;
  const of = { orderId: order.planned.order.id, tierId: tierId(tierAt) };
  return tierDays(week.plan.value, of, week.room.calendar);
}

/** The labels of one order, tier by tier. */
export function labelsOfOrder(
  worked: WorkedOrder,
  weeks: readonly WorkedWeek[],
  content: OrderLabelContent,
): OrderLabels {
  const { planned } = worked;
  const { order, tiers } = planned;
  return {
    orderId: order.id,
    labels: tiers.flatMap((tier) =>
      packsOf(tier).map((pack) => ({
        ...labelOutcome(
          tierLabelInput(planned, tier, pack, daysIn(weeks, worked, tier.at), content),
          content.kitchen,
        ),
        copies: pack.copies,
      })),
    ),
  };
}

/** Whether everything that an order names is there. */
function isWhole({ tiers, dummies = [] }: Order, { kitchen, recipes, finishes }: Content): boolean {
  const has = (all: readonly { id: string }[], id: string): boolean => all.some((one) => one.id === id);
  const tins = [...kitchen.tins, ...(kitchen.bunTins ?? [])];
  const onThem = [
    ...[...tiers, ...dummies].flatMap((tier) => tier.finishes),
    ...tiers.flatMap(({ small }) => small?.toppings ?? []),
  ];
  return (
    tiers.every(({ recipeId, tinId }) => has(recipes, recipeId) && has(tins, tinId)) &&
    onThem.every(({ finishId }) => has(finishes, finishId))
  );
}

/**
 * The labels of all orders. None for a content that was narrowed to some recipes, tins or finishes: an order cannot
 * be worked out from a part of the kitchen.
 */
export function orderLabels(content: Content): OrderLabels[] {
  if (!content.orders.every((order) => isWhole(order, content))) return [];
  const { orders, weeks } = workedOrders(content);
  return orders.map((order) => labelsOfOrder(order, weeks, content));
}

/** All labels of a kitchen by the folder of their files: samples, then those of its orders. */
export interface LabelFolder {
  /** Below data/. */
  folder: string;
  labels: readonly LabelOutcome[];
}

export const labelFolders = (content: Content): LabelFolder[] => [
  { folder: 'labels', labels: sampleLabels(content) },
  { folder: 'labels/orders', labels: orderLabels(content).flatMap(({ labels }) => labels) },
];
