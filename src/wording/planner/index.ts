/** The planner's words by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbPlanner } from './en-gb.ts';
import { enUsPlanner } from './en-us.ts';
import type { PlannerWords } from './planner-words.ts';

export type { PlannerWords } from './planner-words.ts';

const LOCALES: Record<Locale, PlannerWords> = { 'en-GB': enGbPlanner, 'en-US': enUsPlanner };

/** The words of the planner in a locale. */
export const plannerWordsFor = (locale: Locale): PlannerWords => LOCALES[locale];
