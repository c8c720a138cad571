/** What the commands may use of the site. */
export { buildSite } from './build-site.ts';
export type { FileWithBytes } from './built-files.ts';
export { pagesFolder, prepareSite, wireSite } from './wire-site.ts';
