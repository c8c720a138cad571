/**
 * Which tiers of a week's orders are mixed together? Those of one batter that can be baked on one day: taken by
 * their last possible day, each joins the first mix whose day it allows. That gives the fewest mixes, and every
 * mix is baked as late, and so as fresh, as the first of its cakes allows.
 */
import type { TierAsk } from '../../domain/order.ts';
import type { OrderWeek } from '../../domain/order-week.ts';
import type { Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { KitchenTimes } from '../../domain/times.ts';
import type { OrderContent } from '../orders/order-content.ts';
import { batterKey, mixOf } from '../orders/order-mixes.ts';
import type { PlannedMix, PlannedOrder } from '../orders/planned-order.types.ts';
import { orderWork, type TierRef } from '../orders/work-of.ts';
import { type BakeDays, bakeDays } from './bake-days.ts';

export interface WeekMix extends Omit<PlannedMix, 'tierAt'> {
  /** For every tin of the mix, whose it is. */
  tiers: TierRef[];
  /** ISO date on which it is best baked; null when no day is left. */
  bakeOn: string | null;
}

interface Wanted extends BakeDays {
  ref: TierRef;
  ask: TierAsk;
  of: Pick<PlannedMix, 'recipe' | 'flavours'>;
}

function wantedOf(planned: PlannedOrder, week: OrderWeek, times: KitchenTimes): Wanted[] {
  const work = orderWork(planned);
  return planned.tiers.flatMap((tier) => {
    const tierWork = work.tiers[tier.at];
    if (tierWork === undefined) return [];
    return [
      {
        ref: { orderId: planned.order.id, tierAt: tier.at },
        ask: tier.ask,
        of: tier,
        ...bakeDays(work, tierWork, times, week.calendar),
      },
    ];
  });
}

/** Tiers of one batter by the day they can share, the earliest deadline first. */
function byDay(wanted: readonly Wanted[]): { day: number; tiers: Wanted[] }[] {
  const groups: { day: number; tiers: Wanted[] }[] = [];
  for (const one of [...wanted].sort((a, b) => a.last - b.last)) {
    const open = groups.find(({ day }) => one.first <= day && day <= one.last);
    if (open) open.tiers.push(one);
    else groups.push({ day: one.last, tiers: [one] });
  }
  return groups;
}

const inOrder = (tiers: readonly Wanted[], all: readonly Wanted[]): Wanted[] =>
  all.filter((one) => tiers.includes(one));

/** The mixes of a week, the earliest first. */
export function weekMixes(
  orders: readonly PlannedOrder[],
  week: OrderWeek,
  times: KitchenTimes,
  content: OrderContent,
): Result<WeekMix[]> {
  const wanted = orders.flatMap((planned) => wantedOf(planned, week, times));
  const keys = [...new Set(wanted.map(({ ask }) => batterKey(ask)))];
  const made: { day: number; mix: WeekMix }[] = [];
  const problems: Problem[] = [];
  for (const key of keys) {
    for (const { day, tiers } of byDay(wanted.filter(({ ask }) => batterKey(ask) === key))) {
      const own = inOrder(tiers, wanted);
      const [first] = own;
      if (first === undefined) continue;
      const asks = own.map(({ ask }) => ask);
      const places = own.map((_, at) => at);
      const mix = mixOf(first.of, asks, places, content);
      if (!mix.ok) problems.push(...mix.problems);
      else {
        const { tierAt, ...rest } = mix.value;
        const bakeOn = week.calendar.days[day]?.isoDate ?? null;
        const tiers = tierAt.flatMap((at) => own[at]?.ref ?? []);
        made.push({ day, mix: { ...rest, tiers, bakeOn } });
      }
    }
  }
  if (problems.length > 0) return fail(...problems);
  return succeed(made.sort((a, b) => a.day - b.day).map(({ mix }) => mix));
}
