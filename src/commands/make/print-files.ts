/**
 * The PDFs of a build: every print in every paper that the kitchen uses, in each of its house styles. What was kept
 * from an earlier build is not drawn again; of the rest, where there is much and the computer has a second core,
 * threads beside this one make it while it goes on with the site.
 */
import { availableParallelism } from 'node:os';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { type PrintContent, piecesOf } from '../../prints/catalogue.ts';
import type { KeptPrints } from './kept-prints.ts';
import type { MadePrint } from './made-file.ts';
import { type PrintHouse, printHouse } from './print-house.ts';
import { printKeys } from './print-key.ts';
import { allOf, type PrintTask, printMaker, printTasks } from './print-tasks.ts';
import { type PrintThreads, printThreads, type TakePiece } from './print-threads.ts';

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

/** Is handed every print once, in any order, as soon as there is one. */
export type TakePrint = (print: MadePrint) => void;

/**
 * Problems are the house style's. Same files in the same order, whoever makes them. With `take`, which has them all
 * by then, they come back without their bytes: a kitchen's prints may be larger than the computer's memory.
 */
export async function printFiles(
  job: PrintJob,
  help: PrintHelp = {},
  take?: TakePrint,
): Promise<Result<MadePrint[]>> {
  const house = await printHouse(job.content, job.contentDir);
  if (!house.ok) return house;
  const tasks = printTasks(house.value, piecesOf(job));
  const keys = help.kept === undefined && help.left === undefined ? [] : printKeys(house.value, tasks);
  const all: Result<MadePrint[]>[] = tasks.map(() => fail());
  const missing: { task: PrintTask; index: number }[] = [];
  for (const [index, task] of tasks.entries()) {
    const found = foundBy(keys[index] ?? '', help);
    if (found === null) missing.push({ task, index });
    else all[index] = succeed(handedOn(found, take));
  }
  const asked = missing.map(({ task }) => task);
  await makeAll(house.value, asked, help, (at, made) => {
    const index = missing[at]?.index ?? at;
    if (made.ok) help.kept?.keep(keys[index] ?? '', made.value);
    all[index] = made.ok ? succeed(handedOn(made.value, take)) : made;
  });
  help.kept?.tidy();
  if (help.left !== undefined) help.left.prints = leftBy(keys, all);
  return allOf(all);
}

const foundBy = (key: string, { left, kept }: PrintHelp): readonly MadePrint[] | null =>
  left?.prints.get(key) ?? kept?.find(key) ?? null;

function handedOn(files: readonly MadePrint[], take: TakePrint | undefined): MadePrint[] {
  if (take === undefined) return [...files];
  return files.map((file) => {
    take(file);
    return { ...file, bytes: null };
  });
}

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
  take: TakePiece,
): Promise<void> {
  if (threads !== undefined && tasks.length > 0) return threads().make(house, tasks, take);
  const count = tasks.length < FEW_TASKS ? 1 : Math.min(MOST_THREADS, availableParallelism());
  if (count === 1) {
    const make = printMaker(house);
    for (const [at, task] of tasks.entries()) take(at, make(task));
    return;
  }
  const own = printThreads(count);
  try {
    await own.make(house, tasks, take);
  } finally {
    await own.close();
  }
}
