/**
 * Prints made beside the main thread. Every thread is sent every piece, and whoever comes to one first takes it: so
 * none is left with a long queue at the end. Pieces go out a batch at a time, so that what is being told, sent and
 * sent back stays small however large the kitchen, and two batches ahead, so that no thread waits for the main one,
 * which has other work. The text of a batch stands in memory that all threads read: it is there once.
 */
import { Worker } from 'node:worker_threads';
import type { Result } from '../../domain/result.ts';
import type { PrintPiece } from '../../prints/printable.ts';
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

/** What a thread is sent: the house when it has changed, then the pieces of a run, batch by batch. */
export type ToThread =
  | { house: PrintHouse }
  | {
      run: number;
      /** One number a piece, in their order: 0 until a thread has taken it. */
      taken: Int32Array;
      /** UTF-8, the inputs of all pieces. */
      text: Uint8Array;
      pieces: readonly SentPiece[];
    };

/** A piece and its place among all of the run. */
interface AskedPiece {
  index: number;
  task: PrintTask;
}

/** The same with its input as a part of the batch's text. */
export interface SentPiece extends Omit<PrintTask, 'piece'>, Omit<PrintPiece, 'input'> {
  index: number;
  from: number;
  to: number;
}

/** The task that was sent. */
export function sentTask({ dress, kind, folder, from, to }: SentPiece, text: Uint8Array): PrintTask {
  const input = Buffer.from(text.buffer, text.byteOffset + from, to - from).toString('utf8');
  return { dress, piece: { kind, folder, input } };
}

/** Puts the text of a batch into shared memory; a piece that is made in several styles stands there once. */
function sentBatch(batch: readonly AskedPiece[]): { text: Uint8Array; pieces: SentPiece[] } {
  const inputs = new Map<PrintPiece, { from: number; to: number; input: string }>();
  let length = 0;
  for (const { piece } of batch.map(({ task }) => task)) {
    if (inputs.has(piece)) continue;
    const from = length;
    length += Buffer.byteLength(piece.input);
    inputs.set(piece, { from, to: length, input: piece.input });
  }
  const text = new Uint8Array(new SharedArrayBuffer(length));
  for (const { from, to, input } of inputs.values()) Buffer.from(text.buffer, from, to - from).write(input);
  const pieces = batch.map(({ index, task: { dress, piece } }) => {
    const { from, to } = inputs.get(piece) ?? { from: 0, to: 0 };
    return { index, dress, kind: piece.kind, folder: piece.folder, from, to };
  });
  return { text, pieces };
}

const PROGRAM = new URL('../../../src/bin/print-worker.js', import.meta.url);

/**
 * A document lives until it is written: with the engine's own 16 MB for young objects a tenth of the time goes into
 * moving its parts about.
 */
const resourceLimits = { maxYoungGenerationSizeMb: 96 };

/**
 * A piece with more text than this, in bytes, is a book of a thousand pages, which fills a gigabyte while it is drawn:
 * one thread makes all of these, one after the other.
 */
const LARGE_BYTES = 20_000_000;

/** What a thread is told when it starts. */
export interface ThreadPart {
  takesLarge: boolean;
}

const isLarge = ({ from, to }: SentPiece): boolean => to - from > LARGE_BYTES;

/** Whether a thread may make a piece. */
export const suits = (piece: SentPiece, { takesLarge }: ThreadPart): boolean => takesLarge || !isLarge(piece);

/** Some seconds of work; as much again is on its way. */
const BATCH_CHARACTERS = 4_000_000;
const BATCH_PIECES = 64;
const BATCHES_AHEAD = 2;

const textLength = ({ task }: AskedPiece): number => task.piece.input.length;

/** What takes longest first, so that no thread is left with it at the end: about as long as its text. */
const byLength = (a: AskedPiece, b: AskedPiece): number => textLength(b) - textLength(a) || a.index - b.index;

/** The tasks in batches, each put together when it is asked for. */
function* batchesOf(tasks: Iterable<PrintTask>): Generator<AskedPiece[]> {
  let batch: AskedPiece[] = [];
  let index = 0;
  let characters = 0;
  for (const task of tasks) {
    batch.push({ index, task });
    index += 1;
    characters += task.piece.input.length;
    if (batch.length < BATCH_PIECES && characters < BATCH_CHARACTERS) continue;
    yield batch.sort(byLength);
    [batch, characters] = [[], 0];
  }
  if (batch.length > 0) yield batch.sort(byLength);
}

/** Takes what was made of the task that stands `at` a place among all. */
export type TakePiece = (at: number, made: Result<DrawnPrint[]>) => void;

/** Pieces that were sent together. */
interface Batch {
  taken: Int32Array;
  /** So many are not back yet. */
  left: number;
}

export interface PrintThreads {
  /**
   * Hands over one result for each task as soon as it is made, in any order; asks for tasks as the threads come to
   * them. Throws what a thread, `tasks` or `take` throws.
   */
  make(house: PrintHouse, tasks: Iterable<PrintTask>, take: TakePiece): Promise<void>;
  close(): Promise<void>;
}

/** Starts so many threads; they keep what they have measured from run to run. */
export function printThreads(count: number): PrintThreads {
  const workers = Array.from({ length: count }, (_, index) => {
    const workerData: ThreadPart = { takesLarge: index === 0 };
    return new Worker(PROGRAM, { resourceLimits, workerData });
  });
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
        run += 1;
        onFailure = fails;
        const batches = batchesOf(tasks);
        // What is out, by the place of its piece: the last of a batch to come back asks for another.
        const open = new Map<number, Batch>();
        const sendNext = (): void => {
          const next = batches.next();
          if (next.done) return;
          const sent = sentBatch(next.value);
          const taken = new Int32Array(new SharedArrayBuffer(4 * sent.pieces.length));
          const batch = { taken, left: sent.pieces.length };
          for (const { index } of sent.pieces) open.set(index, batch);
          tell({ run, taken, ...sent });
          // The other threads have nothing to do with it.
          if (sent.pieces.every(isLarge)) sendNext();
        };
        onPiece = ({ run: of, index, made }) => {
          const batch = open.get(index);
          if (of !== run || batch === undefined) return;
          try {
            open.delete(index);
            batch.left -= 1;
            if (batch.left === 0) sendNext();
            take(index, made);
          } catch (error) {
            // Nobody takes the rest: the threads need not make it.
            for (const { taken } of open.values()) taken.fill(1);
            onPiece = () => {};
            return fails(error);
          }
          if (open.size === 0) done();
        };
        for (let ahead = 0; ahead < BATCHES_AHEAD; ahead += 1) sendNext();
        if (open.size === 0) done();
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
