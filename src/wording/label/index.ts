/** The words of labels by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbLabel } from './en-gb.ts';
import { enUsLabel } from './en-us.ts';
import type { LabelWords } from './label-words.ts';

export type { LabelWords } from './label-words.ts';

const LOCALES: Record<Locale, LabelWords> = { 'en-GB': enGbLabel, 'en-US': enUsLabel };

export const labelWordsFor = (locale: Locale): LabelWords => LOCALES[locale];
