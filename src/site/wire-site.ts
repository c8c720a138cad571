/** Wires the site into Eleventy; the same for a whole build and for `npx eleventy` on its own. */
import { readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import type { EleventyConfig } from '@11ty/eleventy';
import type { Content } from '../domain/content.ts';
import type { ChartViews } from '../views/chart-views.ts';
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import { keptFiles, keptPaths, ownPrints, WORKER, workerScript } from './around/offline-worker.ts';
import { siteAround } from './around/site-around.ts';
import { siteLists } from './around/site-lists.ts';
import type { FileWithBytes } from './built-files.ts';
import { bundleOf } from './bundles.ts';
import { embeddableFonts, readHouseFonts } from './house-fonts.ts';
import { plannerAssets } from './planner-assets.ts';
import { publishedFiles } from './published-files.ts';
import { type Asset, siteAssets, TEMPLATES, writeAssets } from './site-assets.ts';
import { type SiteData, siteData } from './site-data.ts';

/** What a site is made from. */
export interface SiteSource {
  content: Content;
  charts: readonly ChartViews[];
  /** The finishing charts; worked out from the content when left out. */
  finishing?: readonly FinishingChartView[];
  contentDir: string;
  /** Name and version of the program, as prints made on the device name it. */
  producer?: string;
  /** Prints and data files that the site offers for download. */
  files: readonly FileWithBytes[];
}

interface PreparedSite {
  data: SiteData;
  assets: Asset[];
}

const copied = ({ path, bytes }: FileWithBytes): Asset => ({ path: `files/${path}`, bytes });

/** Everything that the templates and the site's folder need, worked out from the content. */
export async function prepareSite(source: SiteSource): Promise<PreparedSite> {
  const { content, charts, finishing, contentDir } = source;
  const files = publishedFiles(source.files, content);
  const { logo } = content.houseStyle;
  const logoSvg = logo === undefined ? null : await readFile(join(contentDir, logo), 'utf8');
  const sizes = files.map(({ path, byteCount }) => ({ path, byteCount }));
  const data = siteData({
    content,
    charts,
    files: sizes,
    logoSvg,
    ...(finishing === undefined ? {} : { finishing }),
  });
  const style = content.houseStyle;
  const given = await readHouseFonts(style, contentDir);
  const assets = await siteAssets(style, given, logoSvg, JSON.stringify(data));
  const fonts = await embeddableFonts(given, style);
  const { producer = 'Tinwright' } = source;
  const planner = data.planner.length === 0 ? [] : await plannerAssets(content, { style, fonts, producer });
  const faces = { heading: fonts.heading.bytes, text: fonts.text.bytes };
  const around = await siteAround(data, content, faces);
  return { data, assets: [...assets, ...planner, ...around, ...files.map(copied)] };
}

/** Lists of what is there, and the worker that keeps it on a device: made last, from the files as they were written. */
async function writeLists(folder: string, data: SiteData): Promise<void> {
  const pages = (await keptPaths(folder)).filter((path) => path.endsWith('.html'));
  await writeAssets(folder, siteLists(data, pages));
  const worker = workerScript(
    await keptFiles(folder, await keptPaths(folder)),
    await keptFiles(folder, await ownPrints(folder, data.ownPaper)),
    await bundleOf('offline/worker'),
  );
  await writeAssets(folder, [{ path: WORKER, bytes: worker }]);
}

/** Where Eleventy finds the pages: it wants its input relative to the working directory. */
export const pagesFolder = (): string => relative('.', join(TEMPLATES, 'pages')) || '.';

/** Hooks a site into a configuration; `load` runs before each build, so that a saved file shows at once. */
export function wireSite(config: EleventyConfig, load: () => Promise<PreparedSite>): void {
  let prepared: Promise<PreparedSite> | undefined;
  config.setIncludesDirectory('../parts');
  config.setLayoutsDirectory('../layouts');
  config.setDataDirectory('../data');
  config.setTemplateFormats(['njk']);
  config.setUseGitIgnore(false);
  config.ignores.delete('**/node_modules/**');
  config.setNunjucksEnvironmentOptions({ throwOnUndefined: false, autoescape: true });
  config.addWatchTarget(join(TEMPLATES, 'style'));
  config.addWatchTarget(join(TEMPLATES, 'script'));
  config.on('eleventy.before', async () => {
    prepared = load();
    await prepared;
  });
  config.addGlobalData('site', async () => (await (prepared ?? load())).data);
  config.on('eleventy.after', async ({ directories }) => {
    const { data, assets } = await (prepared ?? load());
    await writeAssets(directories.output, assets);
    await writeLists(directories.output, data);
  });
}
