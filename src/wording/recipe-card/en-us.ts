import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbCards } from './en-gb.ts';
import type { RecipeCardWords } from './recipe-card-words.ts';

const gb = withUsHeads(inAmerican(enGbCards));

export const enUsCards: RecipeCardWords = {
  ...gb,
  date: americanDate,
  subject: (recipe) => `${recipe}: weights for a few pans, method, oven, and how to tell that it is done.`,
};
