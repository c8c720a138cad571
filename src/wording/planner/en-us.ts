/** US English for the planner. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbPlanner } from './en-gb.ts';
import type { PlannerWords } from './planner-words.ts';

const gb = withUsHeads(inAmerican(enGbPlanner));

export const enUsPlanner: PlannerWords = {
  ...gb,
  options: { ...gb.options, grams: 'grams' },
  own: { ...gb.own, examples: { egg: 'US large, 1 3/4 oz', bowl: '5 us qt', step: '0.1 oz' } },
  cost: { ...gb.cost, example: '2 lb 2.60, 5 lb 4.20' },
  answer: {
    ...gb.answer,
    stands: (inches, share) => `stands ${inches} in deep raw, ${share}`,
    bakesTo: (inches) => `bakes to ${inches} in`,
  },
};
