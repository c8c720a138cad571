/**
 * What can be found: every recipe, chart, tin, flavour, finish, free page and word of the glossary. The index is made
 * at build time and stands in a classic script, so that finding also works from disk and without a signal.
 */

import MiniSearch from 'minisearch';
import { FIND_OPTIONS } from '../../views/find-options.ts';
import { type AroundWords, aroundWordsFor } from '../../wording/around/index.ts';
import { glossaryFor } from '../../wording/glossary/index.ts';
import type { SiteData } from '../site-data.ts';

export interface Findable {
  id: number;
  path: string;
  title: string;
  /** 'Tin chart' */
  kind: string;
  text: string;
}

export const FIND_INDEX = 'script/find-index.js';

type Part = Omit<Findable, 'id' | 'kind'>;

const of = (kind: string, parts: readonly Part[]): Omit<Findable, 'id'>[] =>
  parts.map((part) => ({ ...part, kind }));

/** Everything, kind by kind, in the order of the site's own lists. */
export function findables(data: SiteData): Findable[] {
  const locale = data.lang;
  const { kinds }: AroundWords = aroundWordsFor(locale);
  const all = [
    ...of(
      kinds.recipe,
      data.recipePages.map(({ path, name, summary }) => ({ path, title: name, text: summary })),
    ),
    ...of(
      kinds.chart,
      data.chartPages.map(({ head, title, summary }) => ({
        path: head.path,
        title,
        text: summary,
      })),
    ),
    ...of(
      kinds.tin,
      data.tinPages.map(({ path, name, sizeText, note }) => ({
        path,
        title: name,
        text: `${sizeText} ${note}`,
      })),
    ),
    ...of(
      kinds.flavour,
      data.flavourPages.map(({ head }) => ({ path: head.path, title: head.title, text: head.description })),
    ),
    ...of(
      kinds.finish,
      data.finishPages.map(({ head, finish }) => ({
        path: head.path,
        title: head.title,
        text: finish.partsText,
      })),
    ),
    ...of(
      kinds.page,
      [
        ...data.freePages.map(({ head }) => head),
        ...data.nav.map(({ path, text }) => ({ path, title: text, description: '' })),
      ].map(({ path, title, description }) => ({ path, title, text: description })),
    ),
    ...of(
      kinds.term,
      glossaryFor(locale).terms.map(({ id, term, meaning }) => ({
        path: `glossary.html#${id}`,
        title: term,
        text: meaning,
      })),
    ),
  ];
  return all.map((one, id) => ({ id, ...one }));
}

/** The index as a script's text. */
export function findIndexScript(all: readonly Findable[]): string {
  const index = new MiniSearch<Findable>(FIND_OPTIONS);
  index.addAll(all);
  return `window.tinwrightFindIndex=${JSON.stringify(JSON.stringify(index)).replaceAll('<', '\\u003c')};\n`;
}
