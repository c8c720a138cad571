/** Ends this process with a word when it stops counting: a reader that hangs would otherwise hang the tests. */
import { Worker } from 'node:worker_threads';

const SOURCE = `
const { workerData, parentPort } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const counter = new Int32Array(workerData.shared);
let before = -1;
setInterval(() => {
  const now = Atomics.load(counter, 0);
  if (now === before && now !== 0) {
    writeSync(2, 'fuzz: ' + workerData.names[Atomics.load(counter, 1)] + ' hangs at input ' + Atomics.load(counter, 2) + '\\n');
    process.kill(process.pid, 'SIGKILL');
  }
  before = now;
}, workerData.limitMs).unref();
`;

export interface Watchdog {
  /** Says that an input is about to be read. */
  beat(reader: number, input: number): void;
  stop(): Promise<unknown>;
}

/** Watches until stopped; an input may take up to twice the limit. */
export function watchdog(names: readonly string[], limitMs: number): Watchdog {
  const shared = new SharedArrayBuffer(12);
  const counter = new Int32Array(shared);
  const worker = new Worker(SOURCE, { eval: true, workerData: { shared, names, limitMs } });
  return {
    beat(reader, input) {
      counter[1] = reader;
      counter[2] = input;
      Atomics.add(counter, 0, 1);
    },
    stop: () => worker.terminate(),
  };
}
