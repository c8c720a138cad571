/** The words of portions by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbPortions } from './en-gb.ts';
import { enUsPortions } from './en-us.ts';
import type { PortionsWords } from './portions-words.ts';

export type { PortionsWords } from './portions-words.ts';

const LOCALES: Record<Locale, PortionsWords> = { 'en-GB': enGbPortions, 'en-US': enUsPortions };

/** The words of portions in a locale. */
export const portionsWordsFor = (locale: Locale): PortionsWords => LOCALES[locale];
