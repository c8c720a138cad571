/** Wires the site into Eleventy; the same for a whole build and for `npx eleventy` on its own. */
import { readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import type { EleventyConfig } from '@11ty/eleventy';
import type { Content } from '../domain/content.ts';
import type { ChartViews } from '../views/chart-views.ts';
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import { keptFile, keptPaths, ownPrints, WORKER, workerScript } from './around/offline-worker.ts';
import { siteAround } from './around/site-around.ts';
import { siteLists } from './around/site-lists.ts';
import type { FileToCopy } from './built-files.ts';
import { bundleOf } from './bundles.ts';
import { embeddableFonts, type FontBytes, readHouseFonts } from './house-fonts.ts';
import { type PageMemory, withoutSame } from './page-memory.ts';
import { plannerAssets } from './planner-assets.ts';
import { publishedFiles } from './published-files.ts';
import { type Asset, siteAssets, TEMPLATES, writeAssets } from './site-assets.ts';
import { type SiteData, siteData } from './site-data.ts';
import { folderOutput, type SiteOutput } from './site-output.ts';

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
  files: readonly FileToCopy[];
  /** Pages of the last build, which are then taken along where they would be the same; replaced by those of this one. */
  pages?: { remembered: PageMemory };
}

interface PreparedSite {
  data: SiteData;
  /** With those pages alone that have to be made. */
  fresh: SiteData;
  /** What stands beside the pages, made when these are there: its fonts have the characters that they show. */
  assets(): Promise<Asset[]>;
}

const copied = ({ path, byteCount, sha256, read }: FileToCopy): Asset => ({
  path: `files/${path}`,
  bytes: read,
  ...(sha256 === undefined ? {} : { known: { bytes: byteCount, sha256 } }),
});

/** Everything that the templates and the site's folder need, worked out from the content. */
export async function prepareSite(source: SiteSource, output: SiteOutput): Promise<PreparedSite> {
  const { content, charts, finishing, contentDir, pages } = source;
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
  const given = await readHouseFonts(content.houseStyle, contentDir);
  const { fresh, told } = withoutSame(data, pages?.remembered ?? new Map(), output);
  const assets = async (): Promise<Asset[]> => {
    const { characters, memory } = told();
    if (pages !== undefined) pages.remembered = memory;
    const common = await siteAssets(content.houseStyle, given, logoSvg, characters);
    return [...common, ...(await otherAssets(data, source, given)), ...files.map(copied)];
  };
  return { data, fresh, assets };
}

/** The planner, and what stands around the pages. */
async function otherAssets(data: SiteData, source: SiteSource, given: FontBytes): Promise<Asset[]> {
  const { content, contentDir, producer = 'Tinwright' } = source;
  const style = content.houseStyle;
  const fonts = await embeddableFonts(given, style);
  const kitchenYaml = await readFile(join(contentDir, 'kitchen.yaml'), 'utf8');
  const house = { style, fonts, producer };
  const planner = data.planner.length === 0 ? [] : await plannerAssets(content, house, kitchenYaml);
  const faces = { heading: fonts.heading.bytes, text: fonts.text.bytes };
  return [...planner, ...(await siteAround(data, content, faces))];
}

/** Lists of what is there, and the worker that keeps it on a device: made last, from the files as they were written. */
async function writeLists(folder: string, data: SiteData, output: SiteOutput): Promise<void> {
  const pages = (await keptPaths(folder)).filter((path) => path.endsWith('.html'));
  writeAssets(output, siteLists(data, pages));
  const hashed = (paths: readonly string[]) => paths.map((path) => keptFile(path, output.hashOf(path)));
  const worker = workerScript(
    hashed(await keptPaths(folder)),
    hashed(await ownPrints(folder, data.ownPaper)),
    await bundleOf('offline/worker'),
  );
  writeAssets(output, [{ path: WORKER, bytes: worker }]);
}

/** Where Eleventy finds the pages: it wants its input relative to the working directory. */
export const pagesFolder = (): string => relative('.', join(TEMPLATES, 'pages')) || '.';

/** Hooks the pages alone into a configuration. */
export function wirePages(config: EleventyConfig, pages: () => Promise<SiteData>): void {
  config.setIncludesDirectory('../parts');
  config.setLayoutsDirectory('../layouts');
  config.setDataDirectory('../data');
  config.setTemplateFormats(['njk']);
  config.setUseGitIgnore(false);
  config.ignores.delete('**/node_modules/**');
  config.setNunjucksEnvironmentOptions({ throwOnUndefined: false, autoescape: true });
  config.addGlobalData('site', pages);
}

/** Writes what stands beside the pages, once they are there. */
export async function finishSite(folder: string, site: PreparedSite, output: SiteOutput): Promise<void> {
  writeAssets(output, await site.assets());
  await writeLists(folder, site.data, output);
}

/** Hooks a site into a configuration; `load` runs before each build, so that a saved file shows at once. */
export function wireSite(config: EleventyConfig, load: () => Promise<PreparedSite>): void {
  let prepared: Promise<PreparedSite> | undefined;
  wirePages(config, async () => (await (prepared ?? load())).fresh);
  config.addWatchTarget(join(TEMPLATES, 'style'));
  config.addWatchTarget(join(TEMPLATES, 'script'));
  config.on('eleventy.before', async () => {
    prepared = load();
    await prepared;
  });
  config.on('eleventy.after', async ({ directories }) => {
    await finishSite(directories.output, await (prepared ?? load()), folderOutput(directories.output));
  });
}
