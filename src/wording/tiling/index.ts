/** The words of large sheets printed on home paper, by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { withUsUnits } from '../us-units.ts';
import { enGbTiling } from './en-gb.ts';
import type { TilingWords } from './tiling-words.ts';

export type { TilingWords } from './tiling-words.ts';

const LOCALES: Record<Locale, TilingWords> = {
  'en-GB': enGbTiling,
  'en-US': { ...withUsUnits(inAmerican(enGbTiling)), papers: { A4: 'A4', Letter: 'Letter' } },
};

/** The words of tiling in a locale. */
export const tilingWordsFor = (locale: Locale): TilingWords => LOCALES[locale];
