/**
 * The whole line, top to bottom: content files → domain values → views → data, print and site, made in a
 * staging folder and swapped in together. Bad content comes back as problems, with the old output untouched.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { dataFiles } from './commands/make/data-files.ts';
import type { MadePrint } from './commands/make/made-file.ts';
import type { PrintHelp, PrintJob } from './commands/make/print-files.ts';
import { type Staging, withStaging } from './commands/output/output-folder.ts';
import { PARTS, type Part, REPORT } from './commands/output/places.ts';
import { filesOf, type Report, reportText } from './commands/output/report.ts';
import { type StageEffects, startStages } from './commands/stages.ts';
import { programVersion } from './commands/version.ts';
import { datedContent } from './domain/edition.ts';
import type { Problem } from './domain/problem.ts';
import type { Result } from './domain/result.ts';
import { readContent } from './read/content.ts';
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
  printing?: PrintHelp;
  /** Writes one file of data, print or report below the staging folder; to the disk when left out. */
  write?(path: string, bytes: Uint8Array | string): void;
}

export type BuildResult =
  | { outcome: 'built'; report: Report }
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
  const content = dated.value;
  const charts = await stages.run('compute', () => chartViews(content));
  const finishing = await stages.run('finishing', () => finishingCharts(content));

  return withStaging(outputDir, async ({ dir, swapIn }: Staging): Promise<BuildResult> => {
    for (const part of parts) mkdirSync(join(dir, part));
    // Other threads make the prints meanwhile; the site waits for them, because it lists them with their sizes.
    const printing = has('print')
      ? stages.run('print', () => prints({ content, charts, finishing, contentDir }, effects.printing))
      : null;
    printing?.catch(() => undefined);
    if (has('data')) {
      const files = await stages.run('data', () =>
        dataFiles(charts, finishing, portionsView(content), labelFolders(content), ordersView(content)),
      );
      for (const file of files) write(join(dir, 'data', file.path), file.bytes);
    }
    const printed = await printing;
    if (printed && !printed.ok) return { outcome: 'content', problems: printed.problems };
    for (const file of printed?.value ?? []) write(join(dir, 'print', file.path), file.bytes);
    if (has('site')) {
      await stages.run('site', async () =>
        (await import('./site/build-site.ts')).buildSite({
          content,
          charts,
          finishing,
          contentDir,
          producer: `Tinwright ${programVersion()}`,
          stagingDir: dir,
          outputDir,
          parts,
        }),
      );
    }
    const files = await stages.run('report', () => filesOf(dir, outputDir, parts));
    const report: Report = {
      tinwright: programVersion(),
      dated: content.kitchen.edition,
      made: PARTS.filter(has),
      files,
      warnings: read.problems,
      milliseconds: stages.milliseconds(),
    };
    write(join(dir, REPORT), reportText(report));
    await stages.run('swap', () => swapIn([...report.made, REPORT]));
    return { outcome: 'built', report };
  });
}

/** The PDF library is loaded only when it is asked for. */
async function prints(job: PrintJob, help?: PrintHelp): Promise<Result<MadePrint[]>> {
  return (await import('./commands/make/print-files.ts')).printFiles(job, help);
}

function writeFile(path: string, bytes: Uint8Array | string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes);
}
