/** The words of an imprint by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbImprint } from './en-gb.ts';
import { enUsImprint } from './en-us.ts';
import type { ImprintWords } from './imprint-words.ts';

const LOCALES: Record<Locale, ImprintWords> = { 'en-GB': enGbImprint, 'en-US': enUsImprint };

/** The imprint words of a locale. */
export const imprintWordsFor = (locale: Locale): ImprintWords => LOCALES[locale];
