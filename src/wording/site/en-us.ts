/** American English for the site's own pages. */
import { inAmerican } from '../american.ts';
import { enGbSite } from './en-gb.ts';
import type { SiteWords } from './site-words.ts';

export const enUsSite: SiteWords = inAmerican(enGbSite);
