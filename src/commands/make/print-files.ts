/**
 * The PDFs of a build: every print in every paper that the kitchen uses, in each of its house styles. What was kept
 * from an earlier build is not drawn again; of the rest, where there is much and the computer has a second core,
 * threads beside this one make it while it goes on with the site.
 */
import { availableParallelism } from 'node:os';
import { fail, type Result } from '../../domain/result.ts';
import { type PrintContent, piecesOf } from '../../prints/catalogue.ts';
import type { KeptPrints } from './kept-prints.ts';
import type { DrawnPrint, MadePrint } from './made-file.ts';
import { type PrintHouse, printHouse } from './print-house.ts';
import { printKeys } from './print-key.ts';
import { allOf, type PrintTask, printMaker, printTasks } from './print-tasks.ts';
import { type PrintThreads, printThreads } from './print-threads.ts';

/** What one run's prints are made from. */
export type PrintJob = PrintContent & { contentDir: string };

/** What outlives a run. */
export interface PrintHelp {
  /** Prints of earlier builds; none are looked up and none are kept when left out. */
  kept?: KeptPrints;
  /** Those of the last build of this process, which the output folder still holds; replaced by those of this one. */
  left?: { prints: ReadonlyMap<string, readonly MadePrint[]> };
  /** Threads that are there already, once somebody needs them. */
  threads?: () => PrintThreads;
}

/** A thread costs a quarter of a second to begin with: as much as a dozen prints. */
const FEW_TASKS = 12;
/** More share too little: each measures the same words again. */
const MOST_THREADS = 4;

/** Problems are the house style's. Same files in the same order, whoever makes them. */
export async function printFiles(job: PrintJob, help: PrintHelp = {}): Promise<Result<MadePrint[]>> {
  const house = await printHouse(job.content, job.contentDir);
  if (!house.ok) return house;
  const tasks = printTasks(house.value, piecesOf(job));
  const keys = help.kept === undefined && help.left === undefined ? [] : printKeys(house.value, tasks);
  const found = tasks.map((_, index) => foundBy(keys[index] ?? '', help));
  const missing = tasks.flatMap((task, index) => (found[index] === null ? [{ task, index }] : []));
  const made = await makeAll(
    house.value,
    missing.map(({ task }) => task),
    help,
  );
  const all: Result<MadePrint[]>[] = found.map((files) => ({ ok: true, value: [...(files ?? [])] }));
  for (const [at, { index }] of missing.entries()) {
    const files = made[at] ?? fail();
    all[index] = files;
    if (files.ok) help.kept?.keep(keys[index] ?? '', files.value);
  }
  help.kept?.tidy();
  if (help.left !== undefined) help.left.prints = leftBy(keys, all);
  return allOf(all);
}

const foundBy = (key: string, { left, kept }: PrintHelp): readonly MadePrint[] | null =>
  left?.prints.get(key) ?? kept?.find(key) ?? null;

/** Without their bytes, which are in the output folder by the time they are asked for. */
function leftBy(keys: readonly string[], all: readonly Result<MadePrint[]>[]): Map<string, MadePrint[]> {
  const entries = all.map((files, at): [string, MadePrint[]] => [
    keys[at] ?? '',
    files.ok ? files.value.map((file) => ({ ...file, bytes: null })) : [],
  ]);
  return new Map(entries.filter(([, files]) => files.length > 0));
}

async function makeAll(
  house: PrintHouse,
  tasks: readonly PrintTask[],
  { threads }: PrintHelp,
): Promise<Result<DrawnPrint[]>[]> {
  if (threads !== undefined && tasks.length > 0) return threads().make(house, tasks);
  const count = tasks.length < FEW_TASKS ? 1 : Math.min(MOST_THREADS, availableParallelism());
  if (count === 1) return tasks.map(printMaker(house));
  const own = printThreads(count);
  try {
    return await own.make(house, tasks);
  } finally {
    await own.close();
  }
}
