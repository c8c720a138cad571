/**
 * The site for those who start Eleventy themselves: the content folder into output/site, the same pages as the
 * whole build gives. The prints and data files that pages offer are made in memory, again only when the content
 * has changed; output/print and output/data are left to the build.
 */
import type { EleventyConfig } from '@11ty/eleventy';
import { dataFiles } from './commands/make/data-files.ts';
import type { MadeFile, MadePrint } from './commands/make/made-file.ts';
import { printFiles } from './commands/make/print-files.ts';
import { programVersion } from './commands/version.ts';
import type { Content } from './domain/content.ts';
import { datedContent } from './domain/edition.ts';
import type { Problem } from './domain/problem.ts';
import type { Result } from './domain/result.ts';
import { readContent } from './read/content.ts';
import { formatProblem } from './read/format-problem.ts';
import { type FileToCopy, folderOutput, pagesFolder, prepareSite, wireSite } from './site/index.ts';
import { type ChartViews, chartViews } from './views/chart-views.ts';
import { finishingCharts } from './views/finishing-chart.ts';
import { labelFolders } from './views/label-orders.ts';
import { ordersView } from './views/orders.ts';
import { portionsView } from './views/portions.ts';

/** Eleventy's own command knows no content folder: another kitchen's is named in the environment. */
const CONTENT = process.env.TINWRIGHT_CONTENT ?? 'content';
const OUTPUT = 'output/site';

/** Wires this kitchen into a configuration and returns the folders Eleventy works in. */
export function wireKitchen(config: EleventyConfig): { dir: { input: string; output: string } } {
  const filesFor = rememberLast(builtInMemory);
  config.addWatchTarget(CONTENT);
  wireSite(config, async () => {
    const content = await currentContent();
    const charts = chartViews(content);
    const producer = `Tinwright ${programVersion()}`;
    const files = await filesFor(content, charts);
    return prepareSite({ content, charts, contentDir: CONTENT, producer, files }, folderOutput(OUTPUT));
  });
  return { dir: { input: pagesFolder(), output: OUTPUT } };
}

/** Eleventy shows what is thrown, and keeps the last good site. */
async function currentContent(): Promise<Content> {
  const { content, problems } = await readContent(CONTENT);
  if (content === null) throw new Error(problemText(problems));
  return soundValue(datedContent(content, process.env.SOURCE_DATE_EPOCH));
}

function soundValue<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(problemText(result.problems));
  return result.value;
}

function problemText(problems: readonly Problem[]): string {
  return `\n${problems.map(formatProblem).join('\n')}`;
}

async function builtInMemory(content: Content, charts: readonly ChartViews[]): Promise<FileToCopy[]> {
  const finishing = finishingCharts(content);
  const prints = soundValue(await printFiles({ content, charts, finishing, contentDir: CONTENT }));
  return [
    ...filesOf('print', prints),
    ...filesOf('data', [
      ...dataFiles(charts, finishing, portionsView(content), labelFolders(content), ordersView(content)),
    ]),
  ];
}

/** In the order of a folder's listing, which is how the build finds them. */
function filesOf(part: 'print' | 'data', files: readonly (MadeFile | MadePrint)[]): FileToCopy[] {
  const withBytes = files.map((file) => {
    const bytes = Buffer.from(file.bytes ?? '');
    return { path: `${part}/${file.path}`, byteCount: bytes.byteLength, read: () => bytes };
  });
  return withBytes.sort((a, b) => (a.path < b.path ? -1 : 1));
}

type Make = typeof builtInMemory;

function rememberLast(make: Make): Make {
  let key = '';
  let files: FileToCopy[] = [];
  return async (content, charts) => {
    // The charts are worked out from the content alone.
    const now = JSON.stringify(content);
    if (now !== key) files = await make(content, charts);
    key = now;
    return files;
  };
}
