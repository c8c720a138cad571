/** The words of the tins' pages, by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { enGbTins } from './en-gb.ts';
import type { TinWords } from './tin-words.ts';

export type { TinWords } from './tin-words.ts';

const LOCALES: Record<Locale, TinWords> = { 'en-GB': enGbTins, 'en-US': inAmerican(enGbTins) };

/** The words of the tins' pages in a locale. */
export const tinWordsFor = (locale: Locale): TinWords => LOCALES[locale];
