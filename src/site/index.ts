/** What the commands may use of the site. */
export { buildSite, type SiteRequest } from './build-site.ts';
export { pagesFolder, prepareSite, type SiteSource, wireSite } from './wire-site.ts';
