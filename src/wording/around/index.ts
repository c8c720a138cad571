/** The words around the pages by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import type { AroundWords } from './around-words.ts';
import { enGbAround } from './en-gb.ts';

export type { AroundWords } from './around-words.ts';

const LOCALES: Record<Locale, AroundWords> = {
  'en-GB': enGbAround,
  'en-US': inAmerican(enGbAround),
};

/** The words around the pages in a locale. */
export const aroundWordsFor = (locale: Locale): AroundWords => LOCALES[locale];
