/** US English for portions and cutting guides. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbPortions } from './en-gb.ts';
import type { PortionsWords } from './portions-words.ts';

export const enUsPortions: PortionsWords = {
  ...withUsHeads(inAmerican(enGbPortions)),
  scale: (scale) => `Cakes drawn 1 : ${scale}; the bar is 4 in.`,
};
