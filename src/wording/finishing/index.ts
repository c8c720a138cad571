/** The words of the finishing chart by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbFinishing } from './en-gb.ts';
import { enUsFinishing } from './en-us.ts';
import type { FinishingWords } from './finishing-words.ts';

export type { FinishingWords } from './finishing-words.ts';
export type {
  FinishingLabel,
  FinishingStepKind,
  FinishingWorkingWords,
} from './working-words.ts';

const LOCALES: Record<Locale, FinishingWords> = { 'en-GB': enGbFinishing, 'en-US': enUsFinishing };

/** The finishing chart's words in a locale. */
export const finishingWordsFor = (locale: Locale): FinishingWords => LOCALES[locale];
