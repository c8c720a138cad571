/** On which days are a tier's cakes baked, their finishes made, and the cakes done, by a timetable? ISO dates. */
import type { Calendar, Minute } from '../../domain/calendar.ts';
import type { StepKind, TierRef, WeekPlan } from './plan.types.ts';

export interface TierDays {
  /** Of the earliest of its cakes. */
  bakedOn: string;
  /** By id; a finish that is bought ready has none. */
  finishesMadeOn: Record<string, string>;
  /** Last work on the cakes before they are stacked or boxed. */
  finishedOn: string;
}

const ON_THE_CAKE: readonly StepKind[] = [
  'oven-out',
  'turn-out',
  'wrap',
  'build',
  'crumb-coat',
  'final-coat',
  'pour',
  'cover',
  'top',
];

type Of = Pick<TierRef, 'orderId' | 'tierId'>;

const isOf =
  ({ orderId, tierId }: Of) =>
  (ref: Of): boolean =>
    ref.orderId === orderId && ref.tierId === tierId;

function dayAt(minute: Minute, { days }: Calendar): string | undefined {
  return days.findLast(({ startMinute }) => startMinute <= minute)?.isoDate;
}

/** The days of one tier; null where the timetable does not bake it. */
export function tierDays({ steps, loads }: WeekPlan, of: Of, calendar: Calendar): TierDays | null {
  const mine = steps.filter(({ tiers }) => tiers.some(isOf(of)));
  const bakedOn = dayAt(
    Math.min(...loads.filter(({ tins }) => tins.some(isOf(of))).map(({ from }) => from)),
    calendar,
  );
  const done = mine.filter(({ kind }) => ON_THE_CAKE.includes(kind)).map(({ from }) => from);
  const finishedOn = dayAt(Math.max(...done), calendar);
  if (bakedOn === undefined || finishedOn === undefined) return null;
  const made = mine.flatMap(({ kind, finishId, orderIds, from }) => {
    const day = kind === 'make-finish' && orderIds.includes(of.orderId) ? dayAt(from, calendar) : undefined;
    return finishId === null || day === undefined ? [] : [[finishId, day] as const];
  });
  return { bakedOn, finishedOn, finishesMadeOn: Object.fromEntries(made) };
}
