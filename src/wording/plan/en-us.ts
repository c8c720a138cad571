/** American English for plans. */
import { inAmerican } from '../american.ts';
import { enGbPlan } from './en-gb.ts';
import type { PlanWords } from './plan-words.ts';

const gb = inAmerican(enGbPlan);

export const enUsPlan: PlanWords = {
  ...gb,
  sheet: { ...gb.sheet, standsAt: (inches, share) => `${inches}\u00a0in, ${share}` },
};
