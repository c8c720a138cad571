/**
 * The labels of an order: one for each kind of cake in it, from what really goes into its mix and onto it. Their
 * days are those of the week's timetable; a week without one leaves them to write by hand.
 */

import type { LabelFacts, LabelFinish, LabelInput, WeighedIn } from '../compute/labels/label.ts';
import { spongeUsual } from '../compute/labels/sponge-usual.ts';
import type { PlannedOrder, PlannedTier } from '../compute/orders/plan-order.ts';
import { tierId } from '../compute/orders/work-of.ts';
import { type TierDays, tierDays } from '../compute/timeline/tier-days.ts';
import type { Content } from '../domain/content.ts';
import type { LabelSettings } from '../domain/label-settings.ts';
import { labelWordsFor } from '../wording/label/index.ts';
import { labelOutcome } from './label.ts';
import type { LabelOutcome } from './label.types.ts';
import { labelFoodName } from './label-food-name.ts';
import { sampleLabels } from './label-samples.ts';
import { type WorkedOrder, type WorkedWeek, workedOrders } from './planned-orders.ts';

type OrderLabelContent = Pick<Content, 'kitchen' | 'ingredients' | 'label' | 'business'>;

export interface TierLabel extends LabelOutcome {
  /** How many cakes want it. */
  copies: number;
}

export interface OrderLabels {
  orderId: string;
  labels: TierLabel[];
}

/** What one cake of the tier gets of its mix. */
function spongeWeighedIn({ mixes }: PlannedOrder, { mixAt, receivesG }: PlannedTier): WeighedIn[] {
  const mix = mixes[mixAt]?.mix;
  if (mix === undefined || mix.batterG === 0) return [];
  const share = Math.min(1, receivesG / mix.batterG);
  return mix.lines.map(({ ingredientId, grams }) => ({ ingredientId, grams: grams * share }));
}

const onEachCake = ({ finishes, count }: PlannedTier): LabelFinish[] =>
  finishes
    .map(({ finish, use, amount }) => ({ finish, use, onCakeG: amount.neededG / count }))
    .filter(({ onCakeG }) => onCakeG > 0);

/** Supports of a stack, and what was hired or put on for show. */
function inedibleIn({ order }: PlannedOrder, content: OrderLabelContent): string[] {
  const { supports } = labelWordsFor(content.kitchen.locale);
  const stacked = order.arrangement === 'stacked' && order.tiers.length > 1;
  const extras = order.extras.filter(({ inedible }) => inedible).map(({ name }) => name.toLowerCase());
  return [...(stacked ? [supports] : []), ...extras];
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

/** The input of a tier's label; of one cake where the tier has several. */
function tierLabelInput(
  planned: PlannedOrder,
  tier: PlannedTier,
  days: TierDays | null,
  content: OrderLabelContent,
): LabelInput {
  const { recipe } = tier;
  const usual = spongeUsual(recipe);
  return {
    id: `${planned.order.id}-tier-${tier.at + 1}`,
    foodName: labelFoodName(tier, content.kitchen),
    sponges: [
      {
        name: recipe.name,
        formula: spongeWeighedIn(planned, tier),
        waterLossShare: usual.waterLossShare,
        keepsDays: usual.keepsDays,
      },
    ],
    finishes: onEachCake(tier),
    ingredients: content.ingredients,
    settings: settingsFor(planned, content),
    business: content.business,
    portions: tier.portionsEach !== null && tier.portionsEach > 0 ? tier.portionsEach : null,
    named: null,
    facts: {
      ...daysOf(planned, days),
      inedible: inedibleIn(planned, content),
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
    labels: tiers.map((tier) => ({
      ...labelOutcome(
        tierLabelInput(planned, tier, daysIn(weeks, worked, tier.at), content),
        content.kitchen,
      ),
      copies: tier.count,
    })),
  };
}

/**
 * The labels of all orders. None for a content that was narrowed to some recipes, tins or finishes: an order cannot
 * be worked out from a part of the kitchen.
 */
export function orderLabels(content: Content): OrderLabels[] {
  const has = (all: readonly { id: string }[], id: string): boolean => all.some((one) => one.id === id);
  const whole = content.orders
    .flatMap(({ tiers }) => tiers)
    .every(
      ({ recipeId, tinId, finishes }) =>
        has(content.recipes, recipeId) &&
        has(content.kitchen.tins, tinId) &&
        finishes.every(({ finishId }) => has(content.finishes, finishId)),
    );
  if (!whole) return [];
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
