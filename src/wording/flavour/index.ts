/** The words of flavours by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbFlavour } from './en-gb.ts';
import { enUsFlavour } from './en-us.ts';
import type { FlavourWords } from './flavour-words.ts';

export type { FlavourWords } from './flavour-words.ts';

const LOCALES: Record<Locale, FlavourWords> = { 'en-GB': enGbFlavour, 'en-US': enUsFlavour };

/** The words of flavours in a locale. */
export const flavourWordsFor = (locale: Locale): FlavourWords => LOCALES[locale];
