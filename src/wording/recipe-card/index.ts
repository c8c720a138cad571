/** The words of recipe cards by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbCards } from './en-gb.ts';
import { enUsCards } from './en-us.ts';
import type { RecipeCardWords } from './recipe-card-words.ts';

export type { RecipeCardWords } from './recipe-card-words.ts';

const LOCALES: Record<Locale, RecipeCardWords> = { 'en-GB': enGbCards, 'en-US': enUsCards };

/** The card words of a locale. */
export const cardWordsFor = (locale: Locale): RecipeCardWords => LOCALES[locale];
