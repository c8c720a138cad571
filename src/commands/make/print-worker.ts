/** One print thread: makes the pieces that no other thread has taken, and hands their bytes over. */
import { parentPort, workerData } from 'node:worker_threads';
import { type PrintMaker, printMaker } from './print-tasks.ts';
import { type MadePiece, sentTask, suits, type ThreadPart, type ToThread } from './print-threads.ts';

/** Serves until the main thread ends it; whatever is thrown ends the build. */
export function servePrints(): void {
  const port = parentPort;
  if (port === null) throw new Error('prints are served in a thread only');
  const part = workerData as ThreadPart;
  const shelf = new Map();
  let make: PrintMaker | null = null;
  port.on('message', (message: ToThread) => {
    if ('house' in message) {
      make = printMaker(message.house, shelf);
      return;
    }
    if (make === null) throw new Error('a print without a house');
    const { run, taken, text, pieces } = message;
    for (const [at, piece] of pieces.entries()) {
      if (!suits(piece, part) || Atomics.compareExchange(taken, at, 0, 1) !== 0) continue;
      const made = make(sentTask(piece, text));
      const buffers = made.ok ? made.value.map(({ bytes }) => bytes.buffer as ArrayBuffer) : [];
      port.postMessage({ run, index: piece.index, made } satisfies MadePiece, buffers);
    }
  });
}
