/** The glossary by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { enGbGlossary } from './en-gb.ts';
import type { GlossaryTerm, GlossaryWords } from './glossary-words.ts';

export type { GlossaryWords } from './glossary-words.ts';

/** Words that differ by more than their spelling. */
const OWN: Readonly<Record<string, Partial<GlossaryTerm>>> = {
  sponge: { term: 'Sponge cake' },
  'fairy-case': { term: 'Cupcake' },
  portion: {
    meaning:
      'A piece as it is cut, as high as the cake; the kitchen says how long and wide its own pieces are.',
  },
  'scale-step': {
    meaning: 'What the scale can show: a tenth of an ounce on most, a hundredth on a fine one.',
  },
  'yield-density': {
    meaning: 'What batter gives in finished cake: weight for volume, known from proven bakes.',
  },
};

/** Ids are left alone: addresses are made of them. */
const enUsGlossary: GlossaryWords = {
  ...enGbGlossary,
  terms: enGbGlossary.terms.map(({ id, ...said }) => ({ ...inAmerican(said), ...OWN[id], id })),
};

const LOCALES: Record<Locale, GlossaryWords> = { 'en-GB': enGbGlossary, 'en-US': enUsGlossary };

/** The glossary in a locale. */
export const glossaryFor = (locale: Locale): GlossaryWords => LOCALES[locale];
