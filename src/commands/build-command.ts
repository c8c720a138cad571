/** `build`: everything, into the output folder, all at once or not at all. */
import { type BuildEffects, type BuildRequest, type BuildResult, build } from '../build.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { cacheFolder, folderProblem } from './folders.ts';
import { type KeptPrints, openKeptPrints } from './make/kept-prints.ts';
import { repairIfNeeded } from './output/output-folder.ts';
import { PARTS, type Part } from './output/places.ts';
import type { Report } from './output/report.ts';
import { counted, refuseContent, refuseUsage, tellProblems, usageProblem } from './problem-report.ts';
import { processProgress } from './progress.ts';
import type { Terminal } from './terminal.ts';

export interface BuildOptions {
  content: string;
  output: string;
  only?: string;
  quiet: boolean;
  /** Folder of prints of earlier builds; false for none, the usual one when left out. */
  cache?: string | boolean;
}

/** Runs the command. */
export async function runBuild(options: BuildOptions, terminal: Terminal): Promise<ExitCode> {
  const parts = partsOf(options.only);
  if (parts === null) return refuseUsage([onlyProblem(options.only ?? '')], terminal);
  const wrongFolder = folderProblem(options.content, options.output);
  if (wrongFolder !== null) return refuseUsage([wrongFolder], terminal);
  repairIfNeeded(options.output);
  const request = requestFor(options.content, options.output, parts);
  const kept = keptPrintsFor(options.cache);
  const result = await buildWithProgress(request, kept, terminal, options.quiet);
  if (kept !== null && !options.quiet) tellDamaged(kept, terminal);
  return tellResult(result, request, terminal, options.quiet);
}

/** What the environment adds to the options. */
export function requestFor(contentDir: string, outputDir: string, parts: readonly Part[]): BuildRequest {
  const epoch = process.env.SOURCE_DATE_EPOCH;
  return { contentDir, outputDir, parts, ...(epoch === undefined ? {} : { epoch }) };
}

/** Null where every print is to be made afresh. */
function keptPrintsFor(cache: BuildOptions['cache']): KeptPrints | null {
  const folder = cacheFolder(cache);
  return folder === null ? null : openKeptPrints(folder);
}

/** Found out by their checksums; the output is none the worse for it. */
export function tellDamaged(kept: KeptPrints, terminal: Terminal): void {
  const count = kept.damaged();
  if (count > 0) terminal.tell(`${counted(count, 'kept print')} could not be trusted and was made again.`);
}

async function buildWithProgress(
  request: BuildRequest,
  kept: KeptPrints | null,
  terminal: Terminal,
  quiet: boolean,
): Promise<BuildResult> {
  const progress = processProgress(terminal.watched && !quiet);
  const effects: BuildEffects = {
    clock: () => performance.now(),
    progress: progress.show,
    printing: kept === null ? {} : { kept },
  };
  try {
    return await build(request, effects);
  } finally {
    progress.clear();
  }
}

function tellResult(
  result: BuildResult,
  request: BuildRequest,
  terminal: Terminal,
  quiet: boolean,
): ExitCode {
  if (result.outcome === 'usage') return refuseUsage(result.problems, terminal);
  if (result.outcome === 'content') {
    const code = refuseContent(result.problems, terminal);
    terminal.tell(`Nothing was built; ${request.outputDir} is as it was.`);
    return code;
  }
  if (quiet) return EXIT.done;
  tellProblems(result.report.warnings, terminal);
  terminal.say(doneText(result.report, request.outputDir));
  return EXIT.done;
}

function doneText({ files, made, milliseconds, warnings }: Report, outputDir: string): string {
  const count = (part: Part): string => {
    const number = files.filter((file) => file.path.startsWith(`${part}/`)).length;
    return `${part}: ${counted(number, 'file')}${made.includes(part) ? '' : ' (as before)'}`;
  };
  const seconds = ((milliseconds.all ?? 0) / 1000).toFixed(1);
  return `Built ${outputDir} in ${seconds} s. ${PARTS.map(count).join(', ')}; ${counted(warnings.length, 'warning')}.`;
}

function partsOf(only: string | undefined): Part[] | null {
  if (only === undefined) return [...PARTS];
  const asked = only.split(',').map((word) => word.trim());
  if (!asked.every((word) => PARTS.some((part) => part === word))) return null;
  return PARTS.filter((part) => asked.includes(part));
}

function onlyProblem(only: string) {
  return usageProblem(
    'only-unknown',
    `--only is '${only}', expected some of ${PARTS.join(', ')}`,
    "Write it like '--only site,data'.",
  );
}
