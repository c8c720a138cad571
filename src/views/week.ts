/** A week of orders as plain data. */

import { tierOven } from '../compute/orders/tier-oven.ts';
import { batterName, bowlfulId } from '../compute/orders/work-of.ts';
import type { PlannedWeek } from '../compute/weeks/plan-week.ts';
import type { Content } from '../domain/content.ts';
import type { Warning } from '../domain/problem.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatWholeGrams } from '../wording/mass.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { ageWarningsOf } from './age-warnings.ts';
import { totalFigure, wholeEggsFigure } from './figures.ts';
import { batterViews, countFigure } from './order-batters.ts';
import { dayText, handOverView } from './order-hand-over.ts';
import { tierName } from './order-names.ts';
import { hotCoreCaution } from './oven-figures.ts';
import type { WorkedWeek } from './planned-orders.ts';
import { shoppingView } from './shopping.ts';
import type { WeekBatter, WeekView } from './week.types.ts';

/** The day on which a bowl is mixed, by the week's timetable; null where there is none. */
function mixedOn({ plan, planned, room }: WorkedWeek, mixAt: number, bowlAt: number): string | null {
  if (!plan.ok) return planned.mixes[mixAt]?.bakeOn ?? null;
  const id = bowlfulId(mixAt, bowlAt);
  const step = plan.value.steps.find(({ kind, bowlfulId: of }) => kind === 'mix' && of === id);
  if (step === undefined) return null;
  const day = room.calendar.days.findLast(({ startMinute }) => startMinute <= step.from);
  return day?.isoDate ?? null;
}

function batters(worked: WorkedWeek, content: Content): WeekBatter[] {
  const { orders, mixes, week } = worked.planned;
  const { kitchen, ingredients } = content;
  const words = orderWordsFor(kitchen.locale);
  const tierOf = ({ orderId, tierAt }: { orderId: string; tierAt: number }) =>
    orders.find(({ order }) => order.id === orderId)?.tiers[tierAt];
  const nameOf = ({ orderId, tierAt }: { orderId: string; tierAt: number }): string => {
    const planned = orders.find(({ order }) => order.id === orderId);
    if (planned === undefined) return orderId;
    const { title, tiers } = planned.order;
    return tiers.length === 1 ? title : words.tierOf(title, tierName(planned, tierAt, words));
  };
  return batterViews(mixes, { kitchen, ingredients, nameOf, tierOf }).map((view, at) => {
    const days = view.bowlfuls.map((_, bowlAt) => mixedOn(worked, at, bowlAt));
    const texts = days.map((day) =>
      day === null ? words.week.noDay : words.week.bakeOn(dayText(day, week, words)),
    );
    return { ...view, mixedOn: days, mixedOnTexts: texts };
  });
}

function sharedText({ orders, mixes, ...planned }: PlannedWeek, content: Content): string {
  const alone = orders.reduce((sum, one) => sum + one.mixes.length, 0);
  if (mixes.length >= alone) return '';
  const { eggParts } = wordsFor(content.kitchen.locale);
  const eggs = (count: number): string =>
    `${count}\u00a0${count === 1 ? eggParts.egg.one : eggParts.egg.many}`;
  const over = (grams: number): string => `${formatWholeGrams(grams)}\u00a0g`;
  return orderWordsFor(content.kitchen.locale).week.shared(
    eggs(planned.eggsAlone),
    eggs(planned.eggs),
    over(planned.surplusAloneG),
    over(planned.surplusG),
  );
}

/** Each with the batter it is about, and once where two mixes of a batter share it. */
function mixWarnings({ mixes }: PlannedWeek): Warning[] {
  const told = mixes.flatMap((mixOfTiers) =>
    mixOfTiers.mix.warnings
      .filter(({ code }) => code !== 'second-bake' && code !== 'several-loads')
      .map((warning) => ({ ...warning, message: `${batterName(mixOfTiers)}: ${warning.message}` })),
  );
  return told.filter(({ message }, at) => told.findIndex((other) => other.message === message) === at);
}

/** The view of a worked week. */
export function weekView(worked: WorkedWeek, content: Content): WeekView {
  const { planned, plan } = worked;
  const { week, orders } = planned;
  const { kitchen } = content;
  const words = orderWordsFor(kitchen.locale);
  return {
    id: week.id,
    title: words.week.title(week.id),
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    from: week.from,
    to: week.to,
    rangeText: words.week.range(words.date(week.from), words.date(week.to)),
    lead: words.week.lead(orders.length),
    orders: orders.map(({ order, portions }) => ({
      id: order.id,
      title: order.title,
      reference: order.reference,
      handOver: handOverView(order, week, content),
      portions: countFigure(portions),
    })),
    mixesLead: words.week.mixesLead,
    batters: batters(worked, content),
    sharedText: sharedText(planned, content),
    eggs: wholeEggsFigure(planned.eggs),
    surplus: totalFigure(planned.surplusG),
    shopping: shoppingView(week.id, words.shopping.forWeek(week.id), planned.shopping, content),
    cautions: [
      { code: 'raw-batter', text: words.cautions.raw },
      { code: 'cool', text: words.cautions.cool },
      ...hotCoreCaution(
        orders.flatMap(({ tiers }) => tiers.map(tierOven)),
        kitchen.locale,
      ),
    ],
    warnings: [...ageWarningsOf(plan), ...mixWarnings(planned)],
    refusals: plan.ok
      ? []
      : plan.problems.map(({ code, message, hint = '' }) => ({ code, text: message, hint })),
  };
}
