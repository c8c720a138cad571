import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Disk, realDisk } from '../../../src/commands/output/disk.ts';
import { repairOutput, swapIn } from '../../../src/commands/output/swap.ts';
import { contentsOf, fill, newFolder } from '../support/folders.ts';

const ENTRIES = ['site', 'print', 'data', 'report.json'];
const OLD = {
  'site/index.html': 'old',
  'site/gone.html': 'old',
  'print/a.pdf': 'old',
  'data/a.csv': 'old',
  'report.json': 'old',
};
const NEW = {
  'site/index.html': 'new',
  'site/more.html': 'new',
  'print/a.pdf': 'new',
  'data/a.csv': 'new',
  'report.json': 'new',
};
const MINE = { 'README.md': 'readme', 'notes/mine.txt': 'mine' };

class PowerCut extends Error {}

/** The order of steps is what counts here; waiting for the disk would show nothing more. */
const quickDisk: Disk = {
  ...realDisk,
  writeDurably: (path, text) => {
    writeFileSync(`${path}.draft`, text);
    realDisk.rename(`${path}.draft`, path);
  },
  syncFolder: () => undefined,
  syncTree: () => undefined,
};

/** A disk that stops working for good before its n-th change. */
function cutBefore(step: number): { disk: Disk; steps: () => number } {
  let done = 0;
  const counted =
    <A extends unknown[]>(change: (...args: A) => void) =>
    (...args: A): void => {
      if (done >= step) throw new PowerCut();
      done += 1;
      change(...args);
    };
  const disk: Disk = {
    exists: realDisk.exists,
    makeFolder: counted(quickDisk.makeFolder),
    rename: counted(quickDisk.rename),
    remove: counted(quickDisk.remove),
    writeDurably: counted(quickDisk.writeDurably),
    syncFolder: counted(quickDisk.syncFolder),
    syncTree: counted(quickDisk.syncTree),
  };
  return { disk, steps: () => done };
}

/** A disk on which one rename is refused, once. */
function refusing(at: number): Disk {
  let renames = 0;
  return {
    ...realDisk,
    rename(from, to) {
      renames += 1;
      if (renames === at) throw Object.assign(new Error('refused'), { code: 'EACCES' });
      realDisk.rename(from, to);
    },
  };
}

function staged(old: Record<string, string>): string {
  const folder = newFolder();
  fill(folder, { ...old, ...MINE });
  fill(join(folder, '.staging-1'), NEW);
  return folder;
}

function stepsOfWholeSwap(): number {
  const counter = cutBefore(Number.POSITIVE_INFINITY);
  swapIn(staged(OLD), '.staging-1', ENTRIES, counter.disk);
  return counter.steps();
}

function cutAt(folder: string, step: number): void {
  try {
    swapIn(folder, '.staging-1', ENTRIES, cutBefore(step).disk);
  } catch (error) {
    if (!(error instanceof PowerCut)) throw error;
  }
}

describe('swapIn', () => {
  it('puts every new part in and leaves everything else alone', () => {
    const folder = staged(OLD);
    swapIn(folder, '.staging-1', ENTRIES, realDisk);
    expect(contentsOf(folder)).toEqual({ ...NEW, ...MINE });
  });

  it('carries over the parts it was not asked for', () => {
    const folder = staged(OLD);
    rmSync(join(folder, '.staging-1/site'), { recursive: true });
    rmSync(join(folder, '.staging-1/print'), { recursive: true });
    swapIn(folder, '.staging-1', ['data', 'report.json'], realDisk);
    expect(contentsOf(folder)).toEqual({ ...OLD, 'data/a.csv': 'new', 'report.json': 'new', ...MINE });
  });

  it('when the power is cut before any of its steps, the next command leaves all old or all new', () => {
    const last = stepsOfWholeSwap();
    const outcomes = new Set<string>();
    for (let step = 0; step < last; step += 1) {
      for (const old of [OLD, {}]) {
        const folder = staged(old);
        cutAt(folder, step);
        repairOutput(folder, realDisk);
        const found = JSON.stringify(contentsOf(folder));
        expect([
          JSON.stringify(sorted({ ...old, ...MINE })),
          JSON.stringify(sorted({ ...NEW, ...MINE })),
        ]).toContain(found);
        outcomes.add(found);
      }
    }
    expect(outcomes.size).toBe(3);
  });

  it('survives a second cut while the first one is being repaired', () => {
    const last = stepsOfWholeSwap();
    for (let first = 3; first < last; first += 1) {
      for (let second = 0; second < last; second += 1) {
        const folder = staged(OLD);
        cutAt(folder, first);
        try {
          repairOutput(folder, cutBefore(second).disk);
        } catch (error) {
          if (!(error instanceof PowerCut)) throw error;
        }
        repairOutput(folder, quickDisk);
        expect([OLD, NEW].map((whole) => sorted({ ...whole, ...MINE }))).toContainEqual(contentsOf(folder));
      }
    }
  });

  it('when a rename is refused, puts everything back and says so', () => {
    for (const old of [OLD, {}]) {
      const renames = Object.keys(old).length === 0 ? 4 : 8;
      for (let at = 1; at <= renames; at += 1) {
        const folder = staged(old);
        expect(() => swapIn(folder, '.staging-1', ENTRIES, refusing(at))).toThrow('refused');
        expect(contentsOf(folder)).toEqual(sorted({ ...old, ...MINE }));
      }
    }
  });
});

describe('repairOutput', () => {
  it('clears away the staging folder of a build that never came to its swap', () => {
    const folder = staged(OLD);
    repairOutput(folder, realDisk);
    expect(contentsOf(folder)).toEqual({ ...OLD, ...MINE });
    expect(existsSync(join(folder, '.staging-1'))).toBe(false);
  });

  it('brings back what was moved aside when the staging folder is gone', () => {
    const folder = newFolder();
    fill(folder, { 'data/a.csv': 'old', '.aside-1/site/index.html': 'old' });
    writeFileSync(
      join(folder, '.swap.json'),
      JSON.stringify({ staging: '.staging-1', aside: '.aside-1', entries: ENTRIES }),
    );
    repairOutput(folder, realDisk);
    expect(contentsOf(folder)).toEqual({ 'data/a.csv': 'old', 'site/index.html': 'old' });
  });

  it.each([
    ['cut short', '{"staging":'],
    ['naming folders that are not ours', '{"staging":"../elsewhere","aside":".aside-1","entries":["site"]}'],
    ['naming entries that are not ours', '{"staging":".staging-1","aside":".aside-1","entries":["../../x"]}'],
    ['of another shape', '[]'],
  ])('undoes by a journal %s', (_, journal) => {
    const folder = newFolder();
    fill(folder, { '.aside-1/site/index.html': 'old', 'data/a.csv': 'old', '.swap.json': journal });
    repairOutput(folder, realDisk);
    expect(contentsOf(folder)).toEqual({ 'data/a.csv': 'old', 'site/index.html': 'old' });
  });
});

function sorted(files: Record<string, string>): Record<string, string> {
  return Object.fromEntries(Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1)));
}
