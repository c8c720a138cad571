/** One print thread: makes the pieces that it is asked for and hands their bytes over. */
import { parentPort, workerData } from 'node:worker_threads';
import { type PrintJob, printMaker } from './print-tasks.ts';
import type { AskedPiece, MadePiece } from './print-threads.ts';

/** Serves until the main thread ends it; whatever is thrown ends the build. */
export function servePrints(): void {
  const port = parentPort;
  if (port === null) throw new Error('prints are served in a thread only');
  const make = printMaker(workerData as PrintJob);
  port.on('message', async ({ index, task }: AskedPiece) => {
    const made = await make(task);
    const buffers = made.ok
      ? made.value.flatMap(({ bytes }) => (typeof bytes === 'string' ? [] : [bytes.buffer]))
      : [];
    port.postMessage({ index, made } satisfies MadePiece, buffers as ArrayBuffer[]);
  });
}
