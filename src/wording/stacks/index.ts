/** The words of stacks by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbStacks } from './en-gb.ts';
import { enUsStacks } from './en-us.ts';
import type { StackWords } from './stack-words.ts';

export type { StackCaution, StackWords } from './stack-words.ts';

const LOCALES: Record<Locale, StackWords> = { 'en-GB': enGbStacks, 'en-US': enUsStacks };

/** The words of stacks in a locale. */
export const stackWordsFor = (locale: Locale): StackWords => LOCALES[locale];
