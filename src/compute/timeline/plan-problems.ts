/** Why there is no timetable, and what to mind in the one there is. */
import type { Problem } from '../../domain/problem.ts';
import { DAY_MIN } from '../../domain/times.ts';
import { goTogether, type OvenRules, placeTins, standingRoom } from '../oven/index.ts';
import type { Activity } from './activity.types.ts';
import type { Batch } from './batches.ts';
import type { PlanWarning, Step, WeekPlan } from './plan.types.ts';
import { keepsMin } from './process.ts';
import type { Work, WorkRoom } from './work.ts';

const problem = (code: string, message: string, hint: string): Problem => ({
  code,
  severity: 'error',
  message,
  hint,
});

/** Links between orders and bowlfuls that lead nowhere, and cakes nobody mixes. */
export function workProblems({ orders, bowlfuls }: Work): Problem[] {
  const filled = new Map<string, number>();
  for (const { orderId, tierId, count, parts = 1, ofParts = 1 } of bowlfuls.flatMap(({ tins }) => tins)) {
    const key = `${orderId} ${tierId}`;
    filled.set(key, (filled.get(key) ?? 0) + (count * parts) / ofParts);
  }
  return orders.flatMap((order) =>
    order.tiers.flatMap((tier) => {
      const mixed = filled.get(`${order.id} ${tier.id}`) ?? 0;
      if (Math.abs(mixed - tier.count) < 1e-6) return [];
      const message = `Order ${order.id}, ${tier.name}: ${tier.count} to bake, ${mixed} mixed for`;
      return [problem('tier-not-mixed', message, 'Every cake needs its batter, once.')];
    }),
  );
}

/** Batches that do not go into the oven even by themselves. */
export function batchProblems(batches: readonly Batch[], rules: OvenRules): Problem[] {
  return batches
    .filter(({ oven }) => !goTogether([oven], rules))
    .map(({ bowlfuls, tins, oven }) => {
      const name = bowlfuls.map(({ bowlful }) => bowlful.name).join(', ');
      const tooBig = tins.find(
        ({ tier }) => placeTins([standingRoom(tier.tin, rules.memory)], rules.memory.room).fits !== 'yes',
      );
      if (tooBig) {
        const { widthMm, depthMm } = rules.memory.room;
        const message = `${tooBig.tier.tin.name} does not go into the oven of ${widthMm} × ${depthMm} mm with air around it`;
        return problem(
          'tin-too-big-for-oven',
          message,
          'Measure the oven and its gaps again, or choose a smaller tin.',
        );
      }
      if (oven.standsMin < 0) {
        const message = `${name}: the first bowlful would stand too long while the others are mixed`;
        return problem(
          'batter-stands-too-long',
          message,
          'Mix it in a bigger bowl, or bake it as thinner layers.',
        );
      }
      const message = `${name}: its tins do not go into the oven together`;
      return problem('batch-too-big-for-oven', message, 'Bake the cakes from separate mixes.');
    });
}

/** What found no place: too long for a day, or the calendar begins too late. */
export function stuckProblem(stuck: Activity, work: Work, { calendar, work: settings }: WorkRoom): Problem {
  const subject = stuck.parts[0]?.subject;
  const order = work.orders.find(({ id }) => subject?.orderIds.includes(id));
  const dayMin = settings.workingDay.toMin - settings.workingDay.fromMin;
  const longest = Math.max(...stuck.parts.map(({ minutes }) => minutes));
  const what = `${order?.title ?? 'The work'} (${stuck.parts[0]?.kind ?? 'work'})`;
  if (longest > dayMin) {
    const message = `${what} takes ${longest} minutes in one go, and the working day has ${dayMin}`;
    return problem('longer-than-a-day', message, 'Give the working day more hours, or the work less time.');
  }
  const message = `${what} finds no place after ${calendar.days[0]?.isoDate ?? 'the first day'}`;
  return problem('no-time-left', message, 'Plan fewer orders at a time, or give the working day more hours.');
}

const LATER = 'Move another order of the week, or give the working day more hours, so that it can be';

/** Cakes and finishes older than they keep, and a start that lies before the edition: each with what to change. */
export function ageWarnings(
  { orders }: Work,
  { times, notBefore }: WorkRoom,
  { steps, loads }: Pick<WeekPlan, 'steps' | 'loads'>,
): PlanWarning[] {
  const cakes = orders.flatMap((order) =>
    order.tiers.flatMap((tier) => {
      const baked = loads.filter(({ tins }) =>
        tins.some((tin) => tin.orderId === order.id && tin.tierId === tier.id),
      );
      const ageMin = order.handOver - Math.min(...baked.map(({ from }) => from));
      const keeps = keepsMin(tier, times);
      if (ageMin <= keeps) return [];
      const message = `${order.title}: ${tier.name} is baked ${inWords(ageMin)} before the hand-over and keeps ${inWords(keeps)}. ${LATER} baked later, or choose a cake that keeps longer.`;
      return [{ code: 'cake-too-old', message, orderIds: [order.id] }];
    }),
  );
  const finishes = steps.flatMap((step) => {
    const order = orders.find(({ id }) => step.kind === 'make-finish' && step.orderIds.includes(id));
    const uses = [...(order?.tiers ?? []), ...(order?.dummies ?? [])].flatMap((tier) => tier.finishes);
    const finish = uses.find((each) => each.finish.id === step.finishId)?.finish;
    if (!order || !finish || order.handOver - step.from <= finish.keepsDays * DAY_MIN) return [];
    const message = `${order.title}: ${finish.name} is made ${inWords(order.handOver - step.from)} before the hand-over and keeps ${inWords(finish.keepsDays * DAY_MIN)}. ${LATER} made later, or choose a finish that keeps longer.`;
    return [{ code: 'finish-too-old', message, orderIds: [order.id] }];
  });
  return [...pastWarnings(steps, notBefore), ...cakes, ...finishes];
}

/** A start that lies before the edition. */
function pastWarnings(steps: readonly Step[], notBefore: number | undefined): PlanWarning[] {
  const begin = steps[0]?.from ?? 0;
  if (notBefore === undefined || begin >= notBefore) return [];
  const message = `The work would have had to begin ${inWords(notBefore - begin)} before this edition. Agree on a later hand-over, or on less to make.`;
  const late = steps.filter(({ from }) => from < notBefore).flatMap(({ orderIds }) => orderIds);
  return [{ code: 'start-in-the-past', message, orderIds: [...new Set(late)] }];
}

/** '36 hours', from two days on '3 days' and '3.5 days'. */
function inWords(minutes: number): string {
  const hours = Math.max(1, Math.round(minutes / 60));
  if (hours < 48) return hours === 1 ? '1 hour' : `${hours} hours`;
  return `${Math.round((minutes / DAY_MIN) * 2) / 2} days`;
}
