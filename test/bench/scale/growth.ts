/**
 * How time and memory grow with the kitchen: ONCE and TENFOLD in turns, each build a process of its own with Node's
 * default heap, the lesser of two rounds. With `--largest`, the largest kitchen once, `--half` or
 * `--quarter` so much of it in all that grows. Only what `parts` names is made.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { type KitchenSize, ONCE, partOfLargest, TENFOLD, writeLargeKitchen } from './large-kitchen.ts';

const PROGRAM = join(import.meta.dirname, '../../../src/bin/tinwright.js');
const ROUNDS = 2;

interface Cost {
  seconds: number;
  /** Of the processor: what a busy machine does not change. */
  processorS: number;
  /** The largest that the process ever was, MB; NaN where the system does not tell. */
  peakMB: number;
}

/** Builds a kitchen once; throws what the build says where it fails. */
function costOf(content: string, output: string, parts: readonly string[]): Cost {
  rmSync(output, { recursive: true, force: true });
  const only = ['--only', parts.join(',')];
  const build = [process.execPath, PROGRAM, 'build', '--no-cache', '--content', content, '--output', output];
  const before = performance.now();
  const options = { encoding: 'utf8', maxBuffer: 1 << 28 } as const;
  const { status, stderr } = spawnSync(
    '/usr/bin/time',
    ['-f', 'peak %M processor %U %S', ...build, ...only],
    options,
  );
  if (status !== 0) throw new Error(stderr || 'GNU time is needed to measure memory');
  const [, peak, user, system] = /^peak (\d+) processor ([\d.]+) ([\d.]+)$/m.exec(stderr) ?? [];
  const seconds = (performance.now() - before) / 1000;
  return { seconds, processorS: Number(user) + Number(system), peakMB: Number(peak) / 1024 };
}

const lesser = (costs: readonly Cost[]): Cost => ({
  seconds: Math.min(...costs.map(({ seconds }) => seconds)),
  processorS: Math.min(...costs.map(({ processorS }) => processorS)),
  peakMB: Math.min(...costs.map(({ peakMB }) => peakMB)),
});

const said = (name: string, { seconds, processorS, peakMB }: Cost): string =>
  `| ${name} | ${seconds.toFixed(1)} s | ${processorS.toFixed(1)} s of the processor | ${peakMB.toFixed(0)} MB |`;

/** By the option's name. */
export const LARGEST_PARTS: Readonly<Record<string, number>> = {
  '--largest': 1,
  '--half': 2,
  '--quarter': 4,
};

/** Prints a table of seconds and peak memory; for `kind` see `LARGEST_PARTS`, anything else is growth. */
export function measureGrowth(kind: string, parts: readonly string[]): void {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-growth-'));
  const kitchen = (name: string, size: KitchenSize): (() => Cost) => {
    writeLargeKitchen('content', join(folder, name), size);
    return () => costOf(join(folder, name), join(folder, 'output'), parts);
  };
  try {
    console.log(`${parts.join(' and ')}; load ${loadavg()[0]?.toFixed(1)} before it began`);
    const divisor = LARGEST_PARTS[kind];
    if (divisor !== undefined) {
      console.log(said(kind.slice(2), kitchen('largest', partOfLargest(divisor))()));
      return;
    }
    const measures = [kitchen('once', ONCE), kitchen('tenfold', TENFOLD)];
    const costs: Cost[][] = measures.map(() => []);
    for (let round = 0; round < ROUNDS; round += 1)
      for (const [at, measure] of measures.entries()) costs[at]?.push(measure());
    const [once, tenfold] = costs.map(lesser);
    if (once === undefined || tenfold === undefined) return;
    console.log([said('once', once), said('tenfold', tenfold)].join('\n'));
    console.log(`growth ${(tenfold.seconds / once.seconds).toFixed(1)}, goal ≤ 10.5`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
