/** An output folder with nobody else in it: locked, repaired, a fresh staging folder for the new parts. */
import { existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { Stopped, withPlace } from '../unexpected.ts';
import { type Disk, realDisk } from './disk.ts';
import { type LockHolder, takeLock } from './lock.ts';
import { isLeftover, JOURNAL, LOCK, PARTS, README, REPORT, STAGING_PREFIX } from './places.ts';
import { OUTPUT_README } from './readme-text.ts';
import { needsRepair, repairOutput, swapIn } from './swap.ts';

export interface Staging {
  /** The staging folder's path: parts are written into it. */
  dir: string;
  /** False once it is over: what other threads still make must not bring the folder back. */
  isOpen(): boolean;
  /** Puts these entries in the place of the old ones; `isOnDisk` knows files that an earlier build flushed. */
  swapIn(entries: string[], isOnDisk?: (path: string) => boolean): void;
}

/** Lets `work` fill a staging folder; whatever happens, no lock and no staging folder stays behind. */
export async function withStaging<T>(
  outputDir: string,
  work: (staging: Staging) => Promise<T>,
  disk: Disk = realDisk,
): Promise<T> {
  refuseForeignFolder(outputDir);
  mkdirSync(outputDir, { recursive: true });
  const lock = takeLock(outputDir);
  if (!lock.taken) throw new Stopped(busyText(outputDir, lock.holder));
  const name = `${STAGING_PREFIX}${process.pid}`;
  const readme = join(outputDir, README);
  let isOpen = true;
  try {
    repairOutput(outputDir, disk);
    mkdirSync(join(outputDir, name));
    // Written while nothing is decided: after the swap a full disk must not make a finished build look failed.
    writeFileSync(join(outputDir, name, README), OUTPUT_README);
    const result = await work({
      dir: join(outputDir, name),
      isOpen: () => isOpen,
      // A page of somebody's own is left alone.
      swapIn: (entries) =>
        swapIn(outputDir, name, disk.exists(readme) ? entries : [...entries, README], disk),
    });
    if (!disk.exists(readme)) writeFileSync(readme, OUTPUT_README);
    return result;
  } catch (error) {
    clearAtExit(outputDir, name);
    throw withPlace(error, outputDir);
  } finally {
    isOpen = false;
    clearStaging(outputDir, name, disk);
    lock.release();
  }
}

const unfinished = new Set<string>();

/** Of many files written at once one fails first, and others may yet arrive: they go when the process ends. */
function clearAtExit(outputDir: string, name: string): void {
  if (unfinished.size === 0)
    process.once('exit', () => {
      for (const folder of unfinished) clearStaging(dirname(folder), basename(folder), realDisk);
    });
  unfinished.add(join(outputDir, name));
}

/**
 * Every command does this first: a build that was killed half way is finished or undone before anybody looks.
 * Leaves alone what a running build is busy with.
 */
export function repairIfNeeded(outputDir: string, disk: Disk = realDisk): void {
  if (!needsRepair(outputDir)) return;
  const lock = takeLock(outputDir);
  if (!lock.taken) return;
  try {
    repairOutput(outputDir, disk);
  } finally {
    lock.release();
  }
}

/** With a journal on disk the staging folder is still needed: the next command deals with both. */
function clearStaging(outputDir: string, name: string, disk: Disk): void {
  if (!disk.exists(join(outputDir, JOURNAL))) disk.remove(join(outputDir, name));
}

function busyText(outputDir: string, holder: LockHolder | null): string {
  const file = join(outputDir, LOCK);
  if (holder === null) return `another build is running in ${outputDir}. If none is, delete ${file}.`;
  const where = holder.host === hostname() ? '' : ` on ${holder.host}`;
  const stale = where === '' ? '' : ` If it is not, delete ${file}.`;
  return `another build (process ${holder.pid}${where}) is running in ${outputDir}. Wait for it to end.${stale}`;
}

/**
 * Somebody's home folder may well hold a folder called `print`: a folder that has other things in it beside
 * one of our names, and no report of ours, was not made by a build and is not written over.
 */
function refuseForeignFolder(outputDir: string): void {
  if (!existsSync(outputDir)) return;
  if (!statSync(outputDir).isDirectory()) throw new Stopped(`${outputDir} is a file, not a folder.`);
  const names = readdirSync(outputDir).filter((name) => !isLeftover(name));
  if (names.includes(REPORT)) return;
  const taken = PARTS.find((part) => names.includes(part));
  const foreign = names.find((name) => name !== README && !name.startsWith('.') && !isPart(name));
  if (taken === undefined || foreign === undefined) return;
  throw new Stopped(
    `${join(outputDir, taken)} is there already, and no ${REPORT} shows that a build made it. Nothing was changed. Choose another folder with --output.`,
  );
}

function isPart(name: string): boolean {
  return PARTS.some((part) => part === name);
}
