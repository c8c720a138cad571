/** The locales there are; a kitchen names one. */
import type { Locale } from '../../domain/kitchen.ts';
import type { Words } from '../words.ts';
import { enGB } from './en-GB.ts';
import { enUS } from './en-US.ts';

const LOCALES: Record<Locale, Words> = { 'en-GB': enGB, 'en-US': enUS };

/** The words of a locale. */
export const wordsFor = (locale: Locale): Words => LOCALES[locale];
