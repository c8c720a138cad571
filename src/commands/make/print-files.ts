/**
 * The PDFs of a build: every print in every paper that the kitchen uses, in each of its house styles. Where there
 * are many and the computer has a second core, threads beside this one make them while it goes on with the site.
 */
import { availableParallelism } from 'node:os';
import type { Result } from '../../domain/result.ts';
import type { MadeFile } from './made-file.ts';
import { allOf, type PrintJob, printMaker, printTasks } from './print-tasks.ts';
import { madeByThreads } from './print-threads.ts';

/** A thread costs a quarter of a second to begin with: as much as the prints of a few charts. */
const FEW_CHARTS = 8;
/** More share too little: each measures the same words again. */
const MOST_THREADS = 4;

/** Problems are the house style's. Same files in the same order, whoever makes them. */
export async function printFiles(job: PrintJob): Promise<Result<MadeFile[]>> {
  const tasks = printTasks(job.content);
  const threads = job.charts.length < FEW_CHARTS ? 1 : Math.min(MOST_THREADS, availableParallelism());
  if (threads > 1) return allOf(await madeByThreads(job, tasks, threads));
  const make = printMaker(job);
  const made: Result<MadeFile[]>[] = [];
  for (const task of tasks) made.push(await make(task));
  return allOf(made);
}
