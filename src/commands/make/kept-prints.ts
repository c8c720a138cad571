/**
 * Prints of earlier builds in a folder, each under the hash of what it was drawn from. An entry is written beside and
 * renamed into place, so that nobody reads half of one; when it is read its checksums are worked out again, and one
 * that was cut short, changed or put there by somebody else is thrown away. Never relied on: where the folder cannot
 * be read or written, prints are drawn.
 */
import { mkdirSync, readFileSync, rmSync, utimesSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { sha256 } from '../../read/sha256.ts';
import { writeWhole } from '../output/write-whole.ts';
import type { DrawnPrint } from './made-file.ts';
import { tidyFolder } from './tidy-folder.ts';

export interface KeptPrints {
  /** The files of a piece, or null where it must be drawn. */
  find(key: string): DrawnPrint[] | null;
  keep(key: string, files: readonly DrawnPrint[]): void;
  /** Throws away what was used longest ago, where there is too much. */
  tidy(): void;
  /** Entries that were there and could not be trusted, since the last time it was asked. */
  damaged(): number;
}

/** In the head of an entry, which is one line. */
interface Listed {
  path: string;
  bytes: number;
  sha256: string;
}

/** First line: the hash of the second, which lists the files whose bytes follow. */
function entryOf(key: string, files: readonly DrawnPrint[]): Uint8Array[] {
  const list: Listed[] = files.map(({ path, bytes, sha256: hash }) => ({
    path,
    bytes: bytes.length,
    sha256: hash,
  }));
  const head = JSON.stringify({ key, files: list });
  return [Buffer.from(`${sha256(head)}\n${head}\n`), ...files.map(({ bytes }) => bytes)];
}

/** A path of ours stays below the folder of prints. */
const isSound = (path: unknown): boolean =>
  typeof path === 'string' && /^[\w.-]+(\/[\w.-]+)*\.pdf$/.test(path) && !path.split('/').includes('..');

function listIn(head: string, key: string): Listed[] | null {
  const read = JSON.parse(head) as { key: unknown; files: Listed[] };
  return read.key === key && read.files.every(({ path }) => isSound(path)) ? read.files : null;
}

/** Null unless every byte is as it was written. */
function filesIn(entry: Buffer, key: string): DrawnPrint[] | null {
  const first = entry.indexOf(10);
  const second = entry.indexOf(10, first + 1);
  if (first < 0 || second < 0) return null;
  const head = entry.toString('utf8', first + 1, second);
  if (entry.toString('latin1', 0, first) !== sha256(head)) return null;
  const list = listIn(head, key);
  if (list === null) return null;
  let at = second + 1;
  const files = list.map(({ path, bytes: length, sha256: hash }) => {
    const bytes = entry.subarray(at, at + length);
    at += length;
    return { path, byteCount: length, sha256: hash, bytes };
  });
  const isWhole = at === entry.length && files.every(({ bytes, sha256: hash }) => sha256(bytes) === hash);
  return isWhole ? files : null;
}

function readEntry(path: string): Buffer | null {
  try {
    return readFileSync(path);
  } catch {
    return null;
  }
}

/** Opens a folder, which need not be there yet. `clock` tells the time in ms, for who used what last. */
export function openKeptPrints(folder: string, clock: () => number = Date.now): KeptPrints {
  const placeOf = (key: string): string => join(folder, key.slice(0, 2), key);
  let untrusted = 0;
  let isWritable = true;
  return {
    find(key) {
      const path = placeOf(key);
      const entry = readEntry(path);
      if (entry === null) return null;
      const files = soundFiles(entry, key);
      if (files === null) {
        untrusted += 1;
        rmQuietly(path);
      } else touch(path, clock());
      return files;
    },
    keep(key, files) {
      if (isWritable) isWritable = written(placeOf(key), entryOf(key, files));
    },
    tidy: () => tidyFolder(folder, clock()),
    damaged() {
      const count = untrusted;
      untrusted = 0;
      return count;
    },
  };
}

/** What no build of ours wrote may hold anything: whatever is wrong with it, it is not used. */
function soundFiles(entry: Buffer, key: string): DrawnPrint[] | null {
  try {
    return filesIn(entry, key);
  } catch {
    return null;
  }
}

/** Whether it could be written; nobody is told, because the build is none the worse for it. */
function written(path: string, parts: readonly Uint8Array[]): boolean {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeWhole(path, Buffer.concat(parts));
    return true;
  } catch {
    return false;
  }
}

function rmQuietly(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // Somebody else's to remove.
  }
}

function touch(path: string, nowMs: number): void {
  try {
    utimesSync(path, nowMs / 1000, nowMs / 1000);
  } catch {
    // In a folder that may only be read nobody needs to know who used it.
  }
}
