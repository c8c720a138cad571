/** British English for plans. */
import type { PlanWords } from './plan-words.ts';

export const enGbPlan: PlanWords = {
  bowl: (number, of) => `Bowl ${number} of ${of}`,
  onlyBowl: 'One bowl',
  partOf: (parts, of, tin) =>
    parts === 1 ? `one of ${of} parts of ${tin}` : `${parts} of ${of} parts of ${tin}`,
  mixTitle: 'The mix',
  unfinished: (tin) => `${tin}: known only by the water it holds, so nobody can say how much goes round it.`,
  perCake: (tin, weight) => `${tin}: ${weight} g`,
};
