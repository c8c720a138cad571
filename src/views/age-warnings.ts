/** What a timetable leaves past its keeping, or before its edition, for all that is printed of an order or a week. */
import type { PlanWarning, WeekPlan } from '../compute/timeline/plan.types.ts';
import type { Warning } from '../domain/problem.ts';
import type { Result } from '../domain/result.ts';

/** Codes of what cannot be handed over as it is planned. */
export const TOO_LATE: readonly string[] = ['cake-too-old', 'finish-too-old', 'start-in-the-past'];

const plain = ({ code, message }: PlanWarning): Warning => ({ code, message });

/** Those of a week, or of one of its orders; none for a week without a timetable. */
export const ageWarningsOf = (plan: Result<WeekPlan> | undefined, orderId?: string): Warning[] =>
  plan?.ok === true
    ? plan.value.warnings
        .filter(({ code }) => TOO_LATE.includes(code))
        .filter(({ orderIds }) => orderId === undefined || orderIds.includes(orderId))
        .map(plain)
    : [];
