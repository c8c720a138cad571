/**
 * The PDFs of a build: every print in every paper that the kitchen uses, in each of its house styles. What was kept
 * from an earlier build is not drawn again; of the rest, where there is much and the computer has a second core,
 * threads beside this one make it while it goes on with the site.
 */
import { availableParallelism } from 'node:os';
import { fail, type Result } from '../../domain/result.ts';
import { type PrintContent, piecesOf } from '../../prints/catalogue.ts';
import type { KeptPrints } from './kept-prints.ts';
import type { MadePrint } from './made-file.ts';
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
  /** Threads that are there already. */
  threads?: PrintThreads;
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
  const { kept } = help;
  const keys = kept === undefined ? [] : printKeys(house.value, tasks);
  const found = tasks.map((_, index) => kept?.find(keys[index] ?? '') ?? null);
  const missing = tasks.flatMap((task, index) => (found[index] === null ? [{ task, index }] : []));
  const made = await makeAll(
    house.value,
    missing.map(({ task }) => task),
    help,
  );
  const all: Result<MadePrint[]>[] = found.map((files) => ({ ok: true, value: files ?? [] }));
  for (const [at, { index }] of missing.entries()) {
    const files = made[at] ?? fail();
    all[index] = files;
    if (files.ok) kept?.keep(keys[index] ?? '', files.value);
  }
  kept?.tidy();
  return allOf(all);
}

async function makeAll(
  house: PrintHouse,
  tasks: readonly PrintTask[],
  { threads }: PrintHelp,
): Promise<Result<MadePrint[]>[]> {
  if (threads !== undefined) return threads.make(house, tasks);
  const count = tasks.length < FEW_TASKS ? 1 : Math.min(MOST_THREADS, availableParallelism());
  if (count === 1) return tasks.map(printMaker(house));
  const own = printThreads(count);
  try {
    return await own.make(house, tasks);
  } finally {
    await own.close();
  }
}
