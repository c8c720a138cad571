/**
 * The few things a swap does to the disk, each all or nothing. Passed in, so that a test can cut the power
 * after any one of them.
 */
import {
  closeSync,
  existsSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

export interface Disk {
  exists(path: string): boolean;
  makeFolder(path: string): void;
  rename(from: string, to: string): void;
  /** A file or a whole folder; nothing happens when it is not there. */
  remove(path: string): void;
  /** Written beside, flushed, then renamed into place: readers see all of it or nothing. */
  writeDurably(path: string, text: string): void;
  /** Flushes the names in a folder, so that renames survive a power cut. */
  syncFolder(path: string): void;
  /** Flushes every folder below, and every file that is not flushed yet. */
  syncTree(path: string, isOnDisk?: (path: string) => boolean): void;
}

export const realDisk: Disk = {
  exists: (path) => lstatSync(path, { throwIfNoEntry: false }) !== undefined,
  makeFolder: (path) => void mkdirSync(path, { recursive: true }),
  rename: renameSync,
  remove: (path) => rmSync(path, { recursive: true, force: true }),
  writeDurably,
  syncFolder: syncPath,
  syncTree,
};

function writeDurably(path: string, text: string): void {
  const draft = `${path}.${process.pid}`;
  try {
    writeFlushed(draft, text);
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  }
  syncPath(dirname(path));
}

/** A disk with little room left takes part of a text and says so only by the count. */
function writeFlushed(path: string, text: string): void {
  const bytes = Buffer.from(text);
  const file = openSync(path, 'w');
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Some systems cannot flush a folder; the order of renames then rests on the file system alone. */
function syncPath(path: string): void {
  if (!existsSync(path)) return;
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== 'EINVAL' && code !== 'EPERM' && code !== 'EISDIR' && code !== 'ENOTSUP') throw error;
  } finally {
    closeSync(file);
  }
}

function syncTree(path: string, isOnDisk: (path: string) => boolean = () => false): void {
  for (const entry of readdirSync(path, { withFileTypes: true })) {
    const below = join(path, entry.name);
    if (entry.isDirectory()) syncTree(below, isOnDisk);
    else if (!isOnDisk(below)) syncPath(below);
  }
  syncPath(path);
}
