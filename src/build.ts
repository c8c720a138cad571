/**
 * The whole line, top to bottom: content files → domain values → views → data, print and site, made in a
 * staging folder and swapped in together. Bad content comes back as problems, with the old output untouched.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { dataFiles } from './commands/make/data-files.ts';
import { printFiles } from './commands/make/print-files.ts';
import { type Staging, withStaging } from './commands/output/output-folder.ts';
import { PARTS, type Part, REPORT } from './commands/output/places.ts';
import { filesOf, type Report, reportText } from './commands/output/report.ts';
import { type StageEffects, startStages } from './commands/stages.ts';
import { programVersion } from './commands/version.ts';
import { datedContent } from './domain/edition.ts';
import type { Problem } from './domain/problem.ts';
import { readContent } from './read/content.ts';
import { buildSite } from './site/build-site.ts';
import { chartViews } from './views/chart-views.ts';

export interface BuildRequest {
  contentDir: string;
  outputDir: string;
  parts: readonly Part[];
  /** Text of SOURCE_DATE_EPOCH; absent when it is not set. */
  epoch?: string;
}

export interface BuildEffects extends StageEffects {
  /** Writes one file below the staging folder; the file system when left out. */
  write?(path: string, bytes: Uint8Array | string): void;
}

export type BuildResult =
  | { outcome: 'built'; report: Report }
  | { outcome: 'content' | 'usage'; problems: Problem[] };

/** Builds the asked parts; the others stay as they are. Throws only on what no content file is to blame for. */
export async function build(request: BuildRequest, effects: BuildEffects): Promise<BuildResult> {
  const { contentDir, outputDir, parts, epoch } = request;
  const write = effects.write ?? writeFile;
  const stages = startStages(effects);
  const read = await stages.run('read', () => readContent(contentDir));
  if (read.content === null) return { outcome: 'content', problems: read.problems };
  const dated = datedContent(read.content, epoch);
  if (!dated.ok) return { outcome: 'usage', problems: dated.problems };
  const content = dated.value;
  const charts = await stages.run('compute', () => chartViews(content));

  return withStaging(outputDir, async (staging: Staging): Promise<BuildResult> => {
    const has = (part: Part) => parts.includes(part);
    for (const part of parts) mkdirSync(join(staging.dir, part));
    if (has('data')) {
      const files = await stages.run('data', () => dataFiles(charts));
      for (const file of files) write(join(staging.dir, 'data', file.path), file.bytes);
    }
    if (has('print')) {
      const files = await stages.run('print', () => printFiles(content, charts, contentDir));
      if (!files.ok) return { outcome: 'content', problems: files.problems };
      for (const file of files.value) write(join(staging.dir, 'print', file.path), file.bytes);
    }
    if (has('site'))
      await stages.run('site', () => buildSite({ content, charts, outDir: join(staging.dir, 'site') }));
    const files = await stages.run('report', () => filesOf(staging.dir, outputDir, parts));
    const report: Report = {
      tinwright: programVersion(),
      dated: content.kitchen.edition,
      made: PARTS.filter(has),
      files,
      warnings: read.problems,
      milliseconds: stages.milliseconds(),
    };
    write(join(staging.dir, REPORT), reportText(report));
    await stages.run('swap', () => staging.swapIn([...report.made, REPORT]));
    return { outcome: 'built', report };
  });
}

function writeFile(path: string, bytes: Uint8Array | string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes);
}
