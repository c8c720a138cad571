/** The words of the booklet by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import type { BookletWords } from './booklet-words.ts';
import { enGbBooklet } from './en-gb.ts';
import { enUsBooklet } from './en-us.ts';

export type { BookletWords } from './booklet-words.ts';

const LOCALES: Record<Locale, BookletWords> = { 'en-GB': enGbBooklet, 'en-US': enUsBooklet };

/** The booklet words of a locale. */
export const bookletWordsFor = (locale: Locale): BookletWords => LOCALES[locale];
