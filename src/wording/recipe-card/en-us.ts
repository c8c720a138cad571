import { americanDate } from '../date.ts';
import { enGbCards } from './en-gb.ts';
import type { RecipeCardWords } from './recipe-card-words.ts';

export const enUsCards: RecipeCardWords = {
  ...enGbCards,
  date: americanDate,
  subject: (recipe) => `${recipe}: weights for a few pans, method, oven, and how to tell that it is done.`,
};
