/** Prints made beside the main thread: each thread takes the next piece when it has done one. */
import { Worker } from 'node:worker_threads';
import type { Result } from '../../domain/result.ts';
import type { MadeFile } from './made-file.ts';
import type { PrintJob, PrintTask } from './print-tasks.ts';

/** What a thread sends back for a piece. */
export interface MadePiece {
  index: number;
  made: Result<MadeFile[]>;
}

/** What a thread is sent: a piece and its place among all. */
export interface AskedPiece {
  index: number;
  task: PrintTask;
}

const PROGRAM = new URL('../../../src/bin/print-worker.js', import.meta.url);

/**
 * A document lives until it is written: with the engine's own 16 MB for young objects a tenth of the time goes into
 * moving its parts about.
 */
const resourceLimits = { maxYoungGenerationSizeMb: 160 };

/** The largest kind first, so that no thread is left with it at the end; the others as they are listed. */
const LARGE: readonly string[] = ['tin-chart', 'lining-template', 'wall-reference'];

function bySize(tasks: readonly PrintTask[]): AskedPiece[] {
  const rank = ({ kind }: PrintTask) => (LARGE.includes(kind) ? LARGE.indexOf(kind) : LARGE.length);
  return tasks
    .map((task, index) => ({ index, task }))
    .sort((a, b) => a.task.dress - b.task.dress || rank(a.task) - rank(b.task) || a.index - b.index);
}

/** Only what prints are drawn from: the working is ten times as much, and goes to the site alone. */
const handed = ({ charts, ...job }: PrintJob): PrintJob => ({
  ...job,
  charts: charts.map(({ chart, guide }) => ({ chart, guide })),
});

/** One result for each task, in the order of the tasks. Throws what a thread throws, and ends the others. */
export async function madeByThreads(
  job: PrintJob,
  tasks: readonly PrintTask[],
  threads: number,
): Promise<Result<MadeFile[]>[]> {
  const waiting = bySize(tasks);
  const made: Result<MadeFile[]>[] = [];
  const workerData = handed(job);
  const workers = Array.from(
    { length: Math.min(threads, tasks.length) },
    () => new Worker(PROGRAM, { workerData, resourceLimits }),
  );
  const ends = workers.map(
    (worker) =>
      new Promise<void>((done, failed) => {
        const askNext = () => {
          const next = waiting.shift();
          if (next) worker.postMessage(next);
          else done();
        };
        worker.on('message', ({ index, made: files }: MadePiece) => {
          made[index] = files;
          askNext();
        });
        worker.on('error', failed);
        worker.on('exit', (code) => failed(new Error(`a print thread ended early (${code})`)));
        askNext();
      }),
  );
  try {
    await Promise.all(ends);
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return made;
}
