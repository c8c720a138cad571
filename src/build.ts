/**
 * The whole line, top to bottom: content files → domain values → views → data, print and site, made in a
 * staging folder and swapped in together. Bad content comes back as problems, with the old output untouched.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { dataFiles } from './commands/make/data-files.ts';
import { deflated } from './commands/make/deflated.ts';
import type { MadePrint } from './commands/make/made-file.ts';
import type { PrintHelp, PrintJob, TakePrint } from './commands/make/print-files.ts';
import { type BuildMemory, noMemory, remembering, trustedMemory } from './commands/output/build-memory.ts';
import { type Staging, withStaging } from './commands/output/output-folder.ts';
import { PARTS, type Part, REPORT } from './commands/output/places.ts';
import { filesOf, type Report, type ReportFile, reportText } from './commands/output/report.ts';
import { leftFiles, type StagedFiles, stageFiles } from './commands/output/staged-files.ts';
import { type StageEffects, startStages } from './commands/stages.ts';
import { Stopped } from './commands/unexpected.ts';
import { programVersion } from './commands/version.ts';
import { datedContent } from './domain/edition.ts';
import type { Problem } from './domain/problem.ts';
import type { Result } from './domain/result.ts';
import { shareEqual } from './domain/share-equal.ts';
import { readContent } from './read/content.ts';
import type { SiteOutput } from './site/index.ts';
import { chartViews } from './views/chart-views.ts';
import { finishingCharts } from './views/finishing-chart.ts';
import { labelFolders } from './views/label-orders.ts';
import { ordersView } from './views/orders.ts';
import { portionsView } from './views/portions.ts';

export interface BuildRequest {
  contentDir: string;
  outputDir: string;
  parts: readonly Part[];
  /** Text of SOURCE_DATE_EPOCH; absent when it is not set. */
  epoch?: string;
}

export interface BuildEffects extends StageEffects {
  /** Prints of earlier builds, and threads that are there already. */
  printing?: Omit<PrintHelp, 'left'>;
  /** What the last build of this process left in the output folder; the result then carries what this one leaves. */
  memory?: BuildMemory;
  /** Writes one file of data, print or report below the staging folder; to the disk when left out. */
  write?(path: string, bytes: Uint8Array | string): void;
}

export type BuildResult =
  | { outcome: 'built'; report: Report; memory?: BuildMemory }
  | { outcome: 'content'; problems: Problem[] }
  | { outcome: 'usage'; problems: Problem[] };

/** Builds the asked parts; the others stay as they are. Throws only what no content file is to blame for. */
export async function build(request: BuildRequest, effects: BuildEffects): Promise<BuildResult> {
  const { contentDir, outputDir, parts, epoch } = request;
  const write = effects.write ?? writeFile;
  const stages = startStages(effects);
  const has = (part: Part): boolean => parts.includes(part);

  const read = await stages.run('read', () => readContent(contentDir));
  if (read.content === null) return { outcome: 'content', problems: read.problems };
  const dated = datedContent(read.content, epoch);
  if (!dated.ok) return { outcome: 'usage', problems: dated.problems };
  const before = trustedMemory(effects.memory ?? noMemory(), outputDir);
  const content = shareEqual(dated.value, before.content);
  const { remember, results } = remembering(before.results);
  const charts = await stages.run('compute', () => chartViews(content, remember, deflated));
  const finishing = await stages.run('finishing', () => finishingCharts(content));

  return withStaging(outputDir, async ({ dir, isOpen, swapIn }: Staging): Promise<BuildResult> => {
    for (const part of parts) mkdirSync(join(dir, part));
    const staged = stageFiles(dir, outputDir, before.files, write);
    const known = (path: string): ReportFile | undefined =>
      staged.fileAt(path) ?? fileLeft(path, parts, before);
    const left = { prints: before.prints };
    const pages = { remembered: before.pages };
    const help = { ...effects.printing, ...(effects.memory === undefined ? {} : { left }) };
    const take = (print: MadePrint): void => {
      if (!isOpen()) throw new Error('the build that asked for prints is over');
      stagePrint(print, staged);
    };
    // Other threads make the prints meanwhile; the site waits for them, because it lists them with their sizes.
    const printing = has('print')
      ? stages.run('print', () => prints({ content, charts, finishing, contentDir }, help, take))
      : null;
    printing?.catch(() => undefined);
    if (has('data')) {
      await stages.run('data', async () => {
        const [labels, orders] = [labelFolders(content), ordersView(content)];
        for (const { path, bytes } of dataFiles(charts, finishing, portionsView(content), labels, orders)) {
          staged.write(`data/${path}`, bytes);
          // Prints that were made meanwhile are written too, and let go.
          await turn();
        }
      });
    }
    const printed = await printing;
    if (printed && !printed.ok) return { outcome: 'content', problems: printed.problems };
    if (has('site')) {
      await stages.run('site', async () => {
        const { buildSite, builtFiles } = await import('./site/index.ts');
        const files = (['print', 'data'] as const).flatMap((part) =>
          builtFiles(part, join(has(part) ? dir : outputDir, part)),
        );
        return buildSite({
          content,
          charts,
          finishing,
          contentDir,
          producer: `Tinwright ${programVersion()}`,
          files: files.map((file) => ({ ...file, ...hashOf(known(file.path)) })),
          pages,
          stagingDir: dir,
          output: siteOutput(staged),
        });
      });
    }
    const files = await stages.run('report', () => filesOf(dir, outputDir, parts, known));
    const report: Report = {
      tinwright: programVersion(),
      dated: content.kitchen.edition,
      made: PARTS.filter(has),
      files,
      warnings: read.problems,
      milliseconds: stages.milliseconds(),
    };
    write(join(dir, REPORT), reportText(report));
    await stages.run('swap', () => swapIn([...report.made, REPORT], staged.isCarried));
    if (effects.memory === undefined) return { outcome: 'built', report };
    const now = {
      files: leftFiles(outputDir, files),
      prints: left.prints,
      pages: pages.remembered,
      results,
      content,
    };
    return { outcome: 'built', report, memory: now };
  });
}

function stagePrint({ path, byteCount, sha256, bytes }: MadePrint, staged: StagedFiles): void {
  const place = `print/${path}`;
  if (bytes !== null) staged.write(place, bytes, { bytes: byteCount, sha256 });
  else if (!staged.carry(place)) throw new Stopped(`${place} was changed while it was needed. Build again.`);
}

/** What is known of a file of a part that is not made anew. */
const fileLeft = (path: string, parts: readonly Part[], { files }: BuildMemory): ReportFile | undefined => {
  const left = parts.some((part) => path.startsWith(`${part}/`)) ? undefined : files.get(path);
  return left === undefined ? undefined : { path, bytes: left.bytes, sha256: left.sha256 };
};

const hashOf = (file: ReportFile | undefined): { sha256?: string } =>
  file === undefined ? {} : { sha256: file.sha256 };

const siteOutput = (staged: StagedFiles): SiteOutput => ({
  write: (path, bytes, known) => staged.write(`site/${path}`, bytes, known),
  carry: (path) => staged.carry(`site/${path}`),
  hashOf: (path) => (staged.fileAt(`site/${path}`) ?? staged.note(`site/${path}`)).sha256,
});

/** The PDF library is loaded only when it is asked for. */
async function prints(job: PrintJob, help: PrintHelp, take: TakePrint): Promise<Result<MadePrint[]>> {
  return (await import('./commands/make/print-files.ts')).printFiles(job, help, take);
}

function writeFile(path: string, bytes: Uint8Array | string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes);
}
