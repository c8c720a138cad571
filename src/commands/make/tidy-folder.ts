/**
 * Keeps a folder of entries from growing for ever: those used longest ago go first. Whatever is not named as entries
 * are is left alone, because the folder may be anybody's choice.
 */
import { readdirSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';

/** About three times what the demo prints in two house styles. */
const MOST_BYTES = 512_000_000;
/** Left behind by a build that was killed. */
const PART_MS = 3_600_000;
const OLD_MS = 30 * 24 * PART_MS;

interface Entry {
  path: string;
  bytes: number;
  usedMs: number;
}

const isShelf = (name: string): boolean => /^[0-9a-f]{2}$/.test(name);
const isEntry = (name: string): boolean => /^[0-9a-f]{64}(\.\d+\.part)?$/.test(name);

function entriesIn(folder: string): Entry[] {
  const shelves = readdirSync(folder).filter(isShelf);
  const names = shelves.flatMap((shelf) => readdirSync(join(folder, shelf)).map((name) => join(shelf, name)));
  return names
    .filter((name) => isEntry(basename(name)))
    .flatMap((name) => {
      const path = join(folder, name);
      const found = statSync(path, { throwIfNoEntry: false });
      return found?.isFile() ? [{ path, bytes: found.size, usedMs: found.mtimeMs }] : [];
    });
}

/** Removes half-written entries, what nobody used for a month, and what is too much; another build may do so too. */
export function tidyFolder(folder: string, nowMs: number, mostBytes = MOST_BYTES): void {
  try {
    let total = 0;
    for (const { path, bytes, usedMs } of entriesIn(folder).sort((a, b) => b.usedMs - a.usedMs)) {
      const ageMs = nowMs - usedMs;
      total += bytes;
      const isOver = total > mostBytes || ageMs > OLD_MS || (path.endsWith('.part') && ageMs > PART_MS);
      if (isOver) rmSync(path, { force: true });
    }
  } catch {
    // There is no such folder, or it is not ours to tidy.
  }
}
