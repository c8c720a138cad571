/** The words of the site's own pages, by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbSite } from './en-gb.ts';
import { enUsSite } from './en-us.ts';
import type { SiteWords } from './site-words.ts';

export type { SectionName, SiteWords } from './site-words.ts';

const LOCALES: Record<Locale, SiteWords> = { 'en-GB': enGbSite, 'en-US': enUsSite };

/** The words of the site's pages in a locale. */
export const siteWordsFor = (locale: Locale): SiteWords => LOCALES[locale];
