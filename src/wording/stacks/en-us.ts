/** American English for stacks: what differs from British. */
import { enGbStacks } from './en-gb.ts';
import type { StackWords } from './stack-words.ts';

export const enUsStacks: StackWords = {
  ...enGbStacks,
  cautions: {
    ...enGbStacks.cautions,
    'warm-and-cold': enGbStacks.cautions['warm-and-cold'].replace('25\u00a0°C', '77\u00a0°F'),
  },
  doesNotStand: (tier, below, step) => enGbStacks.doesNotStand(tier, below, step).replace(' tin ', ' pan '),
  unknownWidth: enGbStacks.unknownWidth.replaceAll('tin', 'pan'),
};
