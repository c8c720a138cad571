/** The glossary by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbGlossary } from './en-gb.ts';
import type { GlossaryWords } from './glossary-words.ts';

export type { GlossaryWords } from './glossary-words.ts';

const american = (text: string): string =>
  text
    .replace(/\btins\b/g, 'pans')
    .replace(/\btin\b/g, 'pan')
    .replace(/\bTin\b/g, 'Pan')
    .replace(/\bFlavour\b/g, 'Flavor')
    .replaceAll('millilitre', 'milliliter');

const enUsGlossary: GlossaryWords = {
  ...enGbGlossary,
  terms: enGbGlossary.terms.map(({ id, term, meaning }) => ({
    id,
    term: american(term),
    meaning: american(meaning),
  })),
};

const LOCALES: Record<Locale, GlossaryWords> = { 'en-GB': enGbGlossary, 'en-US': enUsGlossary };

/** The glossary in a locale. */
export const glossaryFor = (locale: Locale): GlossaryWords => LOCALES[locale];
