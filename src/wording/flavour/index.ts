/** The words of flavours by locale; American English differs in none of them so far. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbFlavour } from './en-gb.ts';
import type { FlavourWords } from './flavour-words.ts';

export type { FlavourWords } from './flavour-words.ts';

const LOCALES: Record<Locale, FlavourWords> = { 'en-GB': enGbFlavour, 'en-US': enGbFlavour };

/** The words of flavours in a locale. */
export const flavourWordsFor = (locale: Locale): FlavourWords => LOCALES[locale];
