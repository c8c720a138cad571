/** The words of plans by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbPlan } from './en-gb.ts';
import { enUsPlan } from './en-us.ts';
import type { PlanWords } from './plan-words.ts';

export type { PlanWords } from './plan-words.ts';

const LOCALES: Record<Locale, PlanWords> = {
  'en-GB': enGbPlan,
  'en-US': enUsPlan,
};

/** The words of plans in a locale. */
export const planWordsFor = (locale: Locale): PlanWords => LOCALES[locale];
