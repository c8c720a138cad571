/** American English for stacks: what differs from British. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbStacks } from './en-gb.ts';
import type { StackWords } from './stack-words.ts';

const gb = withUsHeads(inAmerican(enGbStacks));

export const enUsStacks: StackWords = {
  ...gb,
  cautions: {
    ...gb.cautions,
    'warm-and-cold': gb.cautions['warm-and-cold'].replace('25\u00a0°C', '77\u00a0°F'),
  },
  doesNotStand: (tier, below, step) => gb.doesNotStand(tier, below, step).replace(' tin ', ' pan '),
  unknownWidth: gb.unknownWidth.replaceAll('tin', 'pan'),
};
