/** The glossary, and the page to find things on, which also lists everything there is. */
import type { Locale } from '../../domain/kitchen.ts';
import { type PageHead, pageHead } from '../../views/nav.ts';
import { type AroundWords, aroundWordsFor } from '../../wording/around/index.ts';
import { type GlossaryWords, glossaryFor } from '../../wording/glossary/index.ts';
import { FIND_INDEX, type Findable } from './find-index.ts';

export interface GlossaryPage {
  head: PageHead;
  glossary: GlossaryWords;
}

export interface FindPage {
  head: PageHead;
  words: AroundWords['find'];
  /** What the count says, with … where the page puts what it found. */
  nothing: string;
  one: string;
  many: string;
  groups: { kind: string; links: { path: string; title: string }[] }[];
}

export const FIND_SCRIPT = 'script/find.js';

export function glossaryPage(locale: Locale): GlossaryPage {
  const glossary = glossaryFor(locale);
  const { title, description } = glossary;
  return { head: pageHead({ path: 'glossary.html', text: title, description, section: 'pages' }), glossary };
}

export interface OfflinePage {
  head: PageHead;
  words: AroundWords['offline'];
}

/** What the device shows in place of something it never kept. */
export function offlinePage(locale: Locale): OfflinePage {
  const { offline } = aroundWordsFor(locale);
  const { title, text } = offline;
  return {
    head: pageHead({ path: 'offline.html', text: title, description: text, section: 'pages' }),
    words: offline,
  };
}

/** With the index and what searches it. */
export function findPage(locale: Locale, all: readonly Findable[]): FindPage {
  const { find } = aroundWordsFor(locale);
  const kinds = [...new Set(all.map(({ kind }) => kind))];
  return {
    head: pageHead({
      path: 'find.html',
      text: find.title,
      description: find.description,
      section: 'find',
      scripts: [FIND_INDEX, FIND_SCRIPT],
      sheets: ['find.css'],
    }),
    words: find,
    nothing: find.none('…'),
    one: find.count(1),
    many: find.count(2).replace('2', '…'),
    groups: kinds.map((kind) => ({
      kind,
      links: all.filter((one) => one.kind === kind).map(({ path, title }) => ({ path, title })),
    })),
  };
}
