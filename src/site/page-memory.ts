/**
 * Which pages would be the same again? A page is made from its own view, from what all pages share and from the
 * templates: where the hash of these is what it was, the page of the last build is taken along. Templates see one
 * page's view at a time and nothing of the others' (a test holds them to it).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sha256 } from '../read/sha256.ts';
import { charactersOf } from './house-fonts.ts';
import { TEMPLATES } from './site-assets.ts';
import type { SiteData } from './site-data.ts';
import type { SiteOutput } from './site-output.ts';
import { writtenView } from './written-view.ts';

/** The lists that pages are made from, one page an entry. */
export const PAGE_LISTS = [
  ...(['home', 'tins', 'tinPages', 'recipes', 'recipePages', 'charts', 'chartPages'] as const),
  ...(['workingPages', 'bakes', 'bakePages', 'flavours', 'flavourPages', 'finishing'] as const),
  ...(['finishPages', 'planner', 'glossary', 'offline', 'find', 'portions', 'labels'] as const),
  ...(['labelPages', 'orders', 'orderPages', 'weekPages', 'freePages', 'downloads', 'missing'] as const),
] as const satisfies readonly (keyof SiteData)[];

interface RememberedPage {
  key: string;
  /** That stand in its view, once each. */
  characters: string;
}

/** Pages of a build by their path. */
export type PageMemory = ReadonlyMap<string, RememberedPage>;

function templatesText(): string {
  return ['layouts', 'pages', 'parts']
    .flatMap((folder) => readdirSync(join(TEMPLATES, folder)).map((name) => join(folder, name)))
    .sort()
    .map((name) => `${name}\n${readFileSync(join(TEMPLATES, name), 'utf8')}`)
    .join('\n');
}

/** What all pages share. Sentences that take words are functions: they belong to the locale, which is here. */
function frameText(data: SiteData): string {
  const lists: readonly string[] = PAGE_LISTS;
  return JSON.stringify(Object.fromEntries(Object.entries(data).filter(([key]) => !lists.includes(key))));
}

export interface RememberedSite {
  /** The data with those pages alone that have to be made. */
  fresh: SiteData;
  /** What is known once the pages are made: a page that was never made before is not read for this beforehand. */
  told(): ToldSite;
}

interface ToldSite {
  /** All characters of the site, as JSON writes them, about once each. */
  characters: string;
  memory: PageMemory;
}

interface View {
  head: { path: string };
}

/** Carries over what would be the same; `before` is what the last build remembered. */
export function withoutSame(data: SiteData, before: PageMemory, output: SiteOutput): RememberedSite {
  const frame = frameText(data);
  const common = sha256(frame + templatesText());
  const pageOf = (list: string, view: View): RememberedPage => {
    const { hash, characters } = writtenView(view);
    return { key: sha256(`${common} ${list} ${hash}`), characters };
  };
  const isFresh = (list: string, view: View): boolean => {
    const { path } = view.head;
    const known = before.get(path);
    return known === undefined || known.key !== pageOf(list, view).key || !output.carry(path);
  };
  const lists = PAGE_LISTS.map((list) => [list, data[list].filter((view) => isFresh(list, view))]);
  return {
    fresh: { ...data, ...Object.fromEntries(lists) },
    told() {
      const pages = PAGE_LISTS.flatMap((list) => data[list].map((view: View) => ({ list, view })));
      const memory = new Map(pages.map(({ list, view }) => [view.head.path, pageOf(list, view)]));
      const characters = [charactersOf(frame), ...[...memory.values()].map((page) => page.characters)];
      return { characters: charactersOf(characters.join('')), memory };
    },
  };
}
