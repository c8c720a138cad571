/** Makes the whole site in a staging folder, quietly. */
import { join } from 'node:path';
import { Eleventy } from '@11ty/eleventy';
import { pageBatches } from './page-batches.ts';
import type { SiteData } from './site-data.ts';
import type { SiteOutput } from './site-output.ts';
import { finishSite, pagesFolder, prepareSite, type SiteSource, wirePages } from './wire-site.ts';

export interface SiteRequest extends SiteSource {
  /** The site is written here, in `site`. */
  stagingDir: string;
  output: SiteOutput;
}

/** Writes `site` in the staging folder and returns how many pages were made. Throws when a template is broken. */
export async function buildSite({ stagingDir, output, ...source }: SiteRequest): Promise<{ pages: number }> {
  const folder = join(stagingDir, 'site');
  const prepared = await prepareSite(source, output);
  let pages = 0;
  for (const batch of pageBatches(prepared.fresh, source.content.kitchen.tins.length))
    pages += await writePages(folder, batch);
  await finishSite(folder, prepared, output);
  return { pages };
}

/** One run of Eleventy; how many pages it wrote. */
async function writePages(folder: string, data: SiteData): Promise<number> {
  const eleventy = new Eleventy(pagesFolder(), folder, {
    configPath: false,
    quietMode: true,
    config: (config) => wirePages(config, async () => data),
  });
  eleventy.disableLogger();
  const written = await eleventy.write();
  const [, pages] = Array.isArray(written) ? written : [];
  return Array.isArray(pages) ? pages.length : 0;
}
