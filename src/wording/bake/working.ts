/** The words of the working behind bake times, by locale; apart, for a page that fetches its working when asked. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { enGbBakeWorking } from './working-en-gb.ts';
import type { BakeWorkingWords } from './working-words.ts';

const LOCALES: Record<Locale, BakeWorkingWords> = {
  'en-GB': enGbBakeWorking,
  'en-US': inAmerican(enGbBakeWorking),
};

/** The words of the working behind bake times. */
export const bakeWorkingWordsFor = (locale: Locale): BakeWorkingWords => LOCALES[locale];
