/**
 * How a finished build takes the place of the last one. The new parts wait in a staging folder inside the
 * output folder. Once the journal is on disk the swap is decided: whoever finds it carries on from wherever
 * it stopped. For each entry the old one is moved aside, then the new one in; what is still in staging shows
 * what remains to be done, so carrying on twice does no harm. Only when a rename is refused is it undone.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Disk } from './disk.ts';
import { ASIDE_PREFIX, isLeftover, JOURNAL, PARTS, README, REPORT, STAGING_PREFIX } from './places.ts';

export interface SwapJournal {
  staging: string;
  aside: string;
  entries: string[];
}

/**
 * Swaps the entries in; `staging` is a folder name inside the output folder. Files that were flushed by an earlier
 * build are not flushed again. Throws with all as it was.
 */
export function swapIn(
  outputDir: string,
  staging: string,
  entries: string[],
  disk: Disk,
  isOnDisk: (path: string) => boolean = () => false,
): void {
  const journal = { staging, aside: staging.replace(STAGING_PREFIX, ASIDE_PREFIX), entries };
  const missing = entries.find((entry) => !disk.exists(join(outputDir, staging, entry)));
  if (missing !== undefined) throw new Error(`${missing} was to be swapped in and was not made`);
  disk.syncTree(join(outputDir, staging), isOnDisk);
  disk.writeDurably(join(outputDir, JOURNAL), `${JSON.stringify(journal)}\n`);
  finishOrUndo(outputDir, journal, disk);
}

/** Finishes a swap that a build left half done, and clears away what else it left. Needs the lock. */
export function repairOutput(outputDir: string, disk: Disk): void {
  const journal = readJournal(outputDir, disk);
  if (journal !== null) finishOrUndo(outputDir, journal, disk);
  for (const name of readdirSync(outputDir)) {
    if (name.startsWith(STAGING_PREFIX) || name.startsWith(ASIDE_PREFIX) || name.startsWith(`${JOURNAL}.`))
      disk.remove(join(outputDir, name));
  }
}

/** Whether an earlier build left something to finish or to clear away. */
export function needsRepair(outputDir: string): boolean {
  const isFolder = statSync(outputDir, { throwIfNoEntry: false })?.isDirectory() === true;
  return isFolder && readdirSync(outputDir).some(isLeftover);
}

function finishOrUndo(outputDir: string, journal: SwapJournal, disk: Disk): void {
  try {
    if (disk.exists(join(outputDir, journal.staging))) finish(outputDir, journal, disk);
    else restoreAside(outputDir, journal, disk);
  } catch (error) {
    undo(outputDir, journal, disk);
    throw error;
  }
}

function finish(outputDir: string, journal: SwapJournal, disk: Disk): void {
  disk.makeFolder(join(outputDir, journal.aside));
  for (const entry of journal.entries) {
    const { fresh, place, old } = pathsOf(outputDir, journal, entry);
    if (!disk.exists(fresh)) continue;
    if (disk.exists(place)) {
      disk.remove(old);
      disk.rename(place, old);
    }
    disk.rename(fresh, place);
  }
  disk.syncFolder(outputDir);
  close(outputDir, journal, disk);
}

/** Puts everything back. Each state on the way is one that `finish` could carry on from. */
function undo(outputDir: string, journal: SwapJournal, disk: Disk): void {
  for (const entry of [...journal.entries].reverse()) {
    const { fresh, place, old } = pathsOf(outputDir, journal, entry);
    if (!disk.exists(fresh) && disk.exists(place)) disk.rename(place, fresh);
    if (disk.exists(old)) disk.rename(old, place);
  }
  close(outputDir, journal, disk);
}

/** Somebody deleted the staging folder half way: the old entries come back where nothing has taken their place. */
function restoreAside(outputDir: string, journal: SwapJournal, disk: Disk): void {
  for (const entry of journal.entries) {
    const { place, old } = pathsOf(outputDir, journal, entry);
    if (!disk.exists(place) && disk.exists(old)) disk.rename(old, place);
  }
  close(outputDir, journal, disk);
}

function pathsOf(outputDir: string, journal: SwapJournal, entry: string) {
  return {
    fresh: join(outputDir, journal.staging, entry),
    place: join(outputDir, entry),
    old: join(outputDir, journal.aside, entry),
  };
}

/** The journal goes first: without it the two folders are mere leftovers. */
function close(outputDir: string, { staging, aside }: SwapJournal, disk: Disk): void {
  disk.remove(join(outputDir, JOURNAL));
  disk.syncFolder(outputDir);
  disk.remove(join(outputDir, staging));
  disk.remove(join(outputDir, aside));
}

/** A journal is written whole or not at all; one that cannot be read was tampered with, and is undone. */
function readJournal(outputDir: string, disk: Disk): SwapJournal | null {
  const path = join(outputDir, JOURNAL);
  if (!disk.exists(path)) return null;
  const names = readdirSync(outputDir);
  const aside = names.find((name) => name.startsWith(ASIDE_PREFIX)) ?? `${ASIDE_PREFIX}lost`;
  const lost: SwapJournal = { staging: `${STAGING_PREFIX}lost`, aside, entries: [...PARTS, REPORT] };
  try {
    const read: unknown = JSON.parse(readFileSync(path, 'utf8'));
    return isJournal(read) ? read : lost;
  } catch {
    return lost;
  }
}

/** Only names that a build of ours can have written: a journal must not move anything else. */
function isJournal(read: unknown): read is SwapJournal {
  if (typeof read !== 'object' || read === null) return false;
  const { staging, aside, entries } = read as Partial<Record<keyof SwapJournal, unknown>>;
  const ours = (name: unknown, prefix: string): boolean =>
    typeof name === 'string' && name.startsWith(prefix) && /^[\w.-]+$/.test(name);
  const allowed: readonly unknown[] = [...PARTS, REPORT, README];
  return (
    ours(staging, STAGING_PREFIX) &&
    ours(aside, ASIDE_PREFIX) &&
    Array.isArray(entries) &&
    entries.every((entry: unknown) => allowed.includes(entry))
  );
}
