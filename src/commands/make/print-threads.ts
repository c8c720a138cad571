/**
 * Prints made beside the main thread. Every thread is sent every piece, and whoever comes to one first takes it: so
 * none waits for the main thread, which has other work, and none is left with a long queue at the end.
 */
import { Worker } from 'node:worker_threads';
import type { Result } from '../../domain/result.ts';
import type { DrawnPrint } from './made-file.ts';
import type { PrintHouse } from './print-house.ts';
import type { PrintTask } from './print-tasks.ts';

/** What a thread sends back for a piece. */
export interface MadePiece {
  /** Which call it belongs to: pieces of one that failed may yet arrive. */
  run: number;
  index: number;
  made: Result<DrawnPrint[]>;
}

/** What a thread is sent: the house when it has changed, then the pieces of a run. */
export type ToThread =
  | { house: PrintHouse }
  | {
      run: number;
      /** One number a piece: 0 until a thread has taken it. */
      taken: Int32Array;
      pieces: readonly AskedPiece[];
    };

/** A piece and its place among all. */
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

/** What takes longest first, so that no thread is left with it at the end: about as long as its text. */
function bySize(tasks: readonly PrintTask[]): AskedPiece[] {
  return tasks
    .map((task, index) => ({ index, task }))
    .sort(
      (a, b) =>
        a.task.dress - b.task.dress ||
        b.task.piece.input.length - a.task.piece.input.length ||
        a.index - b.index,
    );
}

/** Takes what was made of the task that stands `at` a place among all. */
export type TakePiece = (at: number, made: Result<DrawnPrint[]>) => void;

export interface PrintThreads {
  /** Hands over one result for each task as soon as it is made, in any order. Throws what a thread or `take` throws. */
  make(house: PrintHouse, tasks: readonly PrintTask[], take: TakePiece): Promise<void>;
  close(): Promise<void>;
}

/** Starts so many threads; they keep what they have measured from run to run. */
export function printThreads(count: number): PrintThreads {
  const workers = Array.from({ length: count }, () => new Worker(PROGRAM, { resourceLimits }));
  const tell = (message: ToThread): void => {
    for (const worker of workers) worker.postMessage(message);
  };
  let told = '';
  let run = 0;
  let failed: unknown = null;
  let onFailure = (_: unknown): void => {};
  let onPiece = (_: MadePiece): void => {};
  const fail = (error: unknown): void => {
    failed ??= error;
    onFailure(failed);
  };
  for (const worker of workers) {
    worker.on('message', (piece: MadePiece) => onPiece(piece));
    worker.on('error', fail);
    worker.on('exit', (code) => fail(new Error(`a print thread ended early (${code})`)));
  }
  return {
    make(house, tasks, take) {
      const name = houseName(house);
      if (name !== told) tell({ house });
      told = name;
      return new Promise((done, fails) => {
        if (failed !== null) return fails(failed);
        let left = tasks.length;
        if (left === 0) return done();
        run += 1;
        const taken = new Int32Array(new SharedArrayBuffer(4 * tasks.length));
        onFailure = fails;
        onPiece = ({ run: of, index, made }) => {
          if (of !== run) return;
          try {
            take(index, made);
          } catch (error) {
            // Nobody takes the rest: the threads need not make it.
            taken.fill(1);
            onPiece = () => {};
            return fails(error);
          }
          left -= 1;
          if (left === 0) done();
        };
        tell({ run, taken, pieces: bySize(tasks) });
      });
    },
    async close() {
      onFailure = () => {};
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}

/** The house without its font files, which their hashes stand for. */
function houseName({ dresses, ...rest }: PrintHouse): string {
  return JSON.stringify([rest, dresses.map(({ fonts, ...dress }) => [dress, fonts.hash])]);
}
