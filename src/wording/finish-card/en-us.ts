/** American English for finish cards: every difference is one of spelling. */
import { inAmerican } from '../american.ts';
import { enGbFinishCards } from './en-gb.ts';
import type { FinishCardWords } from './finish-card-words.ts';

export const enUsFinishCards: FinishCardWords = inAmerican(enGbFinishCards);
