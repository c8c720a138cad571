/** The words around the pages by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import type { AroundWords } from './around-words.ts';
import { enGbAround } from './en-gb.ts';

export type { AroundWords } from './around-words.ts';

const LOCALES: Record<Locale, AroundWords> = {
  'en-GB': enGbAround,
  'en-US': {
    ...enGbAround,
    find: {
      ...enGbAround.find,
      description: 'Find a recipe, a pan, a flavor or a word on these pages.',
      lead: 'A recipe, a pan, a flavor, a word.',
    },
    kinds: { ...enGbAround.kinds, chart: 'Pan chart', tin: 'Pan', flavour: 'Flavor' },
  },
};

/** The words around the pages in a locale. */
export const aroundWordsFor = (locale: Locale): AroundWords => LOCALES[locale];
