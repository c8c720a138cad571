/** The words of finish cards by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbFinishCards } from './en-gb.ts';
import { enUsFinishCards } from './en-us.ts';
import type { FinishCardWords } from './finish-card-words.ts';

export type { FinishCardWords } from './finish-card-words.ts';

const LOCALES: Record<Locale, FinishCardWords> = { 'en-GB': enGbFinishCards, 'en-US': enUsFinishCards };

/** The finish card words of a locale. */
export const finishCardWordsFor = (locale: Locale): FinishCardWords => LOCALES[locale];
