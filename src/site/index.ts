/** What the commands may use of the site. */
export { buildSite, type SiteRequest } from './build-site.ts';
export type { FileWithBytes } from './built-files.ts';
export { pagesFolder, prepareSite, type SiteSource, wireSite } from './wire-site.ts';
