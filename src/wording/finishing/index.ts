/** The words of the finishing chart by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbFinishing } from './en-gb.ts';
import { enUsFinishing } from './en-us.ts';
import type { FinishingWords } from './finishing-words.ts';
import { enGbFinishingWorking } from './working-en-gb.ts';
import type { FinishingWorkingWords } from './working-words.ts';

export type { FinishingWords } from './finishing-words.ts';
export type {
  FinishingLabel,
  FinishingStepKind,
  FinishingWorkingWords,
} from './working-words.ts';

const LOCALES: Record<Locale, FinishingWords> = { 'en-GB': enGbFinishing, 'en-US': enUsFinishing };

/** The finishing chart's words in a locale. */
export const finishingWordsFor = (locale: Locale): FinishingWords => LOCALES[locale];

const american = (text: string): string =>
  text.replaceAll('tin', 'pan').replaceAll('millimetre', 'millimeter');

const inAmerican = (words: FinishingWorkingWords): FinishingWorkingWords => ({
  ...words,
  steps: {
    ...words.steps,
    area: { ...words.steps.area, rule: american(words.steps.area.rule) },
    wall: { ...words.steps.wall, rule: american(words.steps.wall.rule) },
    'grown-wall': { ...words.steps['grown-wall'], rule: american(words.steps['grown-wall'].rule) },
  },
});

const WORKING: Record<Locale, FinishingWorkingWords> = {
  'en-GB': enGbFinishingWorking,
  'en-US': inAmerican(enGbFinishingWorking),
};

/** The words of the working behind fillings and coatings in a locale. */
export const finishingWorkingWordsFor = (locale: Locale): FinishingWorkingWords => WORKING[locale];
