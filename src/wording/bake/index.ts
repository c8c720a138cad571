/** The words about time and heat by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import type { BakeWords } from './bake-words.ts';
import { enGbBake } from './en-gb.ts';
import { enUsBake } from './en-us.ts';

export type { BakeWords } from './bake-words.ts';
export { type DialTexts, dialTexts } from './dial.ts';
export { heatApartText, heatScaleOf, heatText, onScale } from './heat.ts';
export { formatBakeMinutes, formatLoggedMinutes } from './minutes.ts';
export type { BakeLabel, BakeStepKind, BakeWorkingWords } from './working-words.ts';

const LOCALES: Record<Locale, BakeWords> = { 'en-GB': enGbBake, 'en-US': enUsBake };

/** The bake words of a locale. */
export const bakeWordsFor = (locale: Locale): BakeWords => LOCALES[locale];
