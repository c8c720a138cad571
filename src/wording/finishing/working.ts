/** The words of the working behind fillings and coatings, by locale; apart, as nothing but the working needs them. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { enGbFinishingWorking } from './working-en-gb.ts';
import type { FinishingWorkingWords } from './working-words.ts';

const LOCALES: Record<Locale, FinishingWorkingWords> = {
  'en-GB': enGbFinishingWorking,
  'en-US': inAmerican(enGbFinishingWorking),
};

/** The words of the working behind fillings and coatings in a locale. */
export const finishingWorkingWordsFor = (locale: Locale): FinishingWorkingWords => LOCALES[locale];
