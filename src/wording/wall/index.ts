/** The words of wall references by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbWall } from './en-gb.ts';
import { enUsWall } from './en-us.ts';
import type { WallWords } from './wall-words.ts';

export type { WallWords } from './wall-words.ts';

const LOCALES: Record<Locale, WallWords> = { 'en-GB': enGbWall, 'en-US': enUsWall };

/** The words of wall references in a locale. */
export const wallWordsFor = (locale: Locale): WallWords => LOCALES[locale];
