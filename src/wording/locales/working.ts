/**
 * The working's words by locale: apart from the others, so that a page which only fetches its working when somebody
 * asks for it need not carry them.
 */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import type { WorkingWords } from '../working-words.ts';
import { enGBWorking } from './en-GB-working.ts';

const LOCALES: Record<Locale, WorkingWords> = { 'en-GB': enGBWorking, 'en-US': inAmerican(enGBWorking) };

/** The words of the working behind a chart, in a locale. */
export const workingWordsFor = (locale: Locale): WorkingWords => LOCALES[locale];
