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
  const read = await printHouse(job.content, job.contentDir);
  if (!read.ok) return read;
  const house = read.value;
  const keyOf = help.kept === undefined && help.left === undefined ? () => '' : printKeys(house);
  const slots: Slot[][] = house.dresses.map(() => []);
  const asked: Slot[] = [];
  function* missing(): Generator<PrintTask> {
    for (const task of printTasks(house, piecesOf(job))) {
      const slot: Slot = { key: keyOf(task), files: fail() };
      slots[task.dress]?.push(slot);
      const found = foundBy(slot.key, help);
      if (found !== null) slot.files = succeed(handedOn(found, take));
      else {
        asked.push(slot);
        yield task;
      }
    }
  }
  await makeAll(house, missing(), help, (at, made) => {
    const slot = asked[at];
    if (slot === undefined) throw new Error(`a print that nobody asked for (${at})`);
    if (made.ok) help.kept?.keep(slot.key, made.value);
    slot.files = made.ok ? succeed(handedOn(made.value, take)) : made;
  });
  help.kept?.tidy();
  const all = slots.flat();
  if (help.left !== undefined) help.left.prints = leftBy(all);
  return allOf(all.map(({ files }) => files));
}

/** What has become of a task. */
interface Slot {
  key: string;
  files: Result<MadePrint[]>;
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
function leftBy(slots: readonly Slot[]): Map<string, MadePrint[]> {
  const entries = slots.map(({ key, files }): [string, MadePrint[]] => [
    key,
    files.ok ? files.value.map((file) => ({ ...file, bytes: null })) : [],
  ]);
  return new Map(entries.filter(([, files]) => files.length > 0));
}

/** Looks ahead: how many there are, up to so many, and all of them still to come. */
function countedTo<T>(most: number, all: Iterator<T>): { count: number; whole: Iterable<T> } {
  const first: T[] = [];
  while (first.length < most) {
    const next = all.next();
    if (next.done) break;
    first.push(next.value);
  }
  const count = first.length;
  function* whole(): Generator<T> {
    yield* first.splice(0);
    for (let next = all.next(); !next.done; next = all.next()) yield next.value;
  }
  return { count, whole: whole() };
}

async function makeAll(
  house: PrintHouse,
  tasks: Iterator<PrintTask>,
  { threads }: PrintHelp,
  take: TakePiece,
): Promise<void> {
  const { count, whole } = countedTo(FEW_TASKS, tasks);
  if (count === 0) return;
  if (threads !== undefined) return threads().make(house, whole, take);
  const threadCount = count < FEW_TASKS ? 1 : Math.min(MOST_THREADS, availableParallelism());
  if (threadCount === 1) {
    const make = printMaker(house);
    let at = 0;
    for (const task of whole) {
      take(at, make(task));
      at += 1;
    }
    return;
  }
  const own = printThreads(threadCount);
  try {
    await own.make(house, whole, take);
  } finally {
    await own.close();
  }
}
