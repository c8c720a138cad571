/** What the commands may use of the site. */
export { buildSite } from './build-site.ts';
export { builtFiles, type FileToCopy } from './built-files.ts';
export type { PageMemory } from './page-memory.ts';
export { folderOutput, type SiteOutput } from './site-output.ts';
export { pagesFolder, prepareSite, wireSite } from './wire-site.ts';
