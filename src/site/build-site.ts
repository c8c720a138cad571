/** Makes the whole site in a staging folder, quietly. */
import { join } from 'node:path';
import { Eleventy } from '@11ty/eleventy';
import type { SiteOutput } from './site-output.ts';
import { pagesFolder, prepareSite, type SiteSource, wireSite } from './wire-site.ts';

export interface SiteRequest extends SiteSource {
  /** The site is written here, in `site`. */
  stagingDir: string;
  output: SiteOutput;
}

/** Writes `site` in the staging folder and returns how many pages were made. Throws when a template is broken. */
export async function buildSite({ stagingDir, output, ...source }: SiteRequest): Promise<{ pages: number }> {
  const eleventy = new Eleventy(pagesFolder(), join(stagingDir, 'site'), {
    configPath: false,
    quietMode: true,
    config: (config) =>
      wireSite(
        config,
        () => prepareSite(source, output),
        () => output,
      ),
  });
  eleventy.disableLogger();
  const written = await eleventy.write();
  const [, pages] = Array.isArray(written) ? written : [];
  return { pages: Array.isArray(pages) ? pages.length : 0 };
}
