/** The words of lining templates by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbTemplates } from './en-gb.ts';
import { enUsTemplates } from './en-us.ts';
import type { TemplateWords } from './template-words.ts';

export type { TemplateWords } from './template-words.ts';

const LOCALES: Record<Locale, TemplateWords> = { 'en-GB': enGbTemplates, 'en-US': enUsTemplates };

/** The template words of a locale. */
export const templateWordsFor = (locale: Locale): TemplateWords => LOCALES[locale];
