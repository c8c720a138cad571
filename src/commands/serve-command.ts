/** `serve`: builds, shows the site on this computer only, and builds again whenever a content file is saved. */
import { join } from 'node:path';
import { type FSWatcher, watch } from 'chokidar';
import type { BuildRequest } from '../build.ts';
import { formatProblem } from '../read/format-problem.ts';
import { requestFor } from './build-command.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { folderProblem, isWithin } from './folders.ts';
import { repairIfNeeded } from './output/output-folder.ts';
import { PARTS } from './output/places.ts';
import { refuseUsage, usageProblem } from './problem-report.ts';
import { type Builder, openBuilder } from './serve/builder.ts';
import { type LiveReload, openLiveReload } from './serve/live-reload.ts';
import { queueRebuilds } from './serve/rebuild.ts';
import { serveSite } from './serve/site-server.ts';
import type { Terminal } from './terminal.ts';
import { unexpectedText } from './unexpected.ts';

export interface ServeOptions {
  content: string;
  output: string;
  port: string;
  /** Folder of prints of earlier builds; false for none, the usual one when left out. */
  cache?: string | boolean;
}

/** Editors save in several steps; this long without another one counts as done. */
const QUIET_MS = 120;

/** Runs until it is interrupted. */
export async function runServe(options: ServeOptions, terminal: Terminal): Promise<ExitCode> {
  const port = /^\d{1,5}$/.test(options.port) ? Number(options.port) : Number.NaN;
  if (!(port <= 65535)) return refuseUsage([portProblem(options.port)], terminal);
  const wrongFolder = folderProblem(options.content, options.output);
  if (wrongFolder !== null) return refuseUsage([wrongFolder], terminal);
  repairIfNeeded(options.output);
  const request = requestFor(options.content, options.output, PARTS);
  const live = openLiveReload();
  const server = await serveSite(join(options.output, 'site'), port, live);
  const builder = openBuilder(options.cache, terminal);
  const rebuild = (): Promise<void> => rebuildAndShow(request, builder, live, terminal);
  const rebuilds = queueRebuilds(rebuild, QUIET_MS);
  // Before the first build, so that a file saved while it runs is not missed.
  const watcher = await watchContent(options, rebuilds.ask);
  rebuilds.now();
  await rebuilds.settled();
  terminal.say(`http://127.0.0.1:${server.port}/ shows ${join(options.output, 'site')}. Stop with Ctrl-C.`);
  await interrupted();
  await watcher.close();
  await rebuilds.settled();
  await builder.close();
  await server.close();
  return EXIT.done;
}

/**
 * Pages and data come first, because somebody is looking at them; then the prints, and the pages that tell of their
 * sizes. The first build makes all at once.
 */
async function rebuildAndShow(
  request: BuildRequest,
  builder: Builder,
  live: LiveReload,
  terminal: Terminal,
): Promise<void> {
  const show = async (asked: BuildRequest, said: string): Promise<boolean> => {
    const wrong = await problemsOf(asked, builder, said, terminal);
    if (wrong === null) live.built();
    else live.problems(wrong);
    return wrong === null;
  };
  if (!builder.remembers()) await show(request, 'Built');
  else if (await show({ ...request, parts: ['site', 'data'] }, 'Built')) await show(request, 'Printed');
}

/** Builds once; the text of what is wrong, or null after a good build. */
async function problemsOf(
  request: BuildRequest,
  builder: Builder,
  said: string,
  terminal: Terminal,
): Promise<string | null> {
  try {
    const start = performance.now();
    const result = await builder.build(request);
    if (result.outcome === 'built') {
      terminal.say(`${said} in ${((performance.now() - start) / 1000).toFixed(1)} s.`);
      return null;
    }
    const text = result.problems.map(formatProblem).join('\n');
    terminal.tell(text);
    return text;
  } catch (error) {
    const text = unexpectedText(error);
    terminal.tell(text);
    return text;
  }
}

/** Resolves when every file there is already is being watched. */
function watchContent({ content, output }: ServeOptions, changed: () => void): Promise<FSWatcher> {
  const ignored = (path: string): boolean => isWithin(path, output);
  const watcher = watch(content, { ignoreInitial: true, ignored }).on('all', changed);
  return new Promise((resolve) => {
    watcher.once('ready', () => resolve(watcher));
  });
}

function interrupted(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
}

function portProblem(port: string) {
  return usageProblem(
    'port',
    `--port is '${port}', expected a whole number from 0 to 65535`,
    "Write it like '--port 8417'.",
  );
}
