/**
 * Everything that is wrong with a timetable, by rules written before the planner and without it: nothing used
 * twice, nothing early, nothing standing or keeping too long, hands asleep at night, the hand-over met.
 */
import type { WeekPlan } from '../../../../src/compute/timeline/plan.types.ts';
import type { Work, WorkRoom } from '../../../../src/compute/timeline/work.ts';
import { bakeFaults, batterFaults, placeFaults } from './baking.ts';
import { orderFaults, shopFaults } from './order-of-work.ts';
import { busyFaults, shapeFaults, sleepFaults, tinFaults } from './resources.ts';

/** One line for each fault; `places` measures the tins on their shelves too, which is slow. */
export function planFaults(work: Work, room: WorkRoom, plan: WeekPlan, places = true): string[] {
  const asked = { work, room, plan };
  const rules = [
    shapeFaults,
    busyFaults,
    sleepFaults,
    tinFaults,
    batterFaults,
    bakeFaults,
    orderFaults,
    shopFaults,
  ];
  const all = places ? [...rules, placeFaults] : rules;
  return all.flatMap((rule) => rule(asked));
}
