/** Makes the whole site in a staging folder, quietly. */
import { join } from 'node:path';
import { Eleventy } from '@11ty/eleventy';
import { builtFiles } from './built-files.ts';
import { pagesFolder, prepareSite, type SiteSource, wireSite } from './wire-site.ts';

export interface SiteRequest
  extends Pick<SiteSource, 'content' | 'charts' | 'finishing' | 'contentDir' | 'producer'> {
  /** The site is written here, in `site`. Parts made in this build lie beside it, the others in the output folder. */
  stagingDir: string;
  outputDir: string;
  parts: readonly string[];
}

/** Writes `site` in the staging folder and returns how many pages were made. Throws when a template is broken. */
export async function buildSite(request: SiteRequest): Promise<{ pages: number }> {
  const { content, charts, finishing, contentDir, producer, stagingDir, outputDir, parts } = request;
  const folderOf = (part: string): string => join(parts.includes(part) ? stagingDir : outputDir, part);
  const files = [...builtFiles('print', folderOf('print')), ...builtFiles('data', folderOf('data'))];
  const source = {
    content,
    charts,
    contentDir,
    files,
    ...(finishing === undefined ? {} : { finishing }),
    ...(producer === undefined ? {} : { producer }),
  };
  const eleventy = new Eleventy(pagesFolder(), join(stagingDir, 'site'), {
    configPath: false,
    quietMode: true,
    config: (config) => wireSite(config, () => prepareSite(source)),
  });
  eleventy.disableLogger();
  const written = await eleventy.write();
  const [, pages] = Array.isArray(written) ? written : [];
  return { pages: Array.isArray(pages) ? pages.length : 0 };
}
