/**
 * How time and memory grow with the kitchen: ONCE and TENFOLD in turns, each build a process of its own with Node's
 * default heap, the lesser of two rounds. With `--largest`, the largest kitchen once. Only what `parts` names is made.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { type KitchenSize, LARGEST, ONCE, TENFOLD, writeLargeKitchen } from './large-kitchen.ts';

const PROGRAM = join(import.meta.dirname, '../../../src/bin/tinwright.js');
const ROUNDS = 2;

interface Cost {
  seconds: number;
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
  const { status, stderr } = spawnSync('/usr/bin/time', ['-f', 'peak %M', ...build, ...only], options);
  if (status !== 0) throw new Error(stderr || 'GNU time is needed to measure memory');
  const peakMB = Number(/^peak (\d+)$/m.exec(stderr)?.[1]) / 1024;
  return { seconds: (performance.now() - before) / 1000, peakMB };
}

const lesser = (costs: readonly Cost[]): Cost => ({
  seconds: Math.min(...costs.map(({ seconds }) => seconds)),
  peakMB: Math.min(...costs.map(({ peakMB }) => peakMB)),
});

const said = (name: string, { seconds, peakMB }: Cost): string =>
  `| ${name} | ${seconds.toFixed(1)} s | ${peakMB.toFixed(0)} MB |`;

/** Prints a table of seconds and peak memory. */
export function measureGrowth(kind: 'growth' | 'largest', parts: readonly string[]): void {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-growth-'));
  const kitchen = (name: string, size: KitchenSize): (() => Cost) => {
    writeLargeKitchen('content', join(folder, name), size);
    return () => costOf(join(folder, name), join(folder, 'output'), parts);
  };
  try {
    console.log(`${parts.join(' and ')}; load ${loadavg()[0]?.toFixed(1)} before it began`);
    if (kind === 'largest') {
      console.log(said('largest', kitchen('largest', LARGEST)()));
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
