/**
 * The files of a build on their way into the staging folder. What an earlier build of this process put into the
 * output folder, and what would be the same again, is linked from there rather than written: a link costs nothing,
 * and the old output stays whole whatever happens to the new.
 */
import { copyFileSync, linkSync, lstatSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { factsOf, type ReportFile } from './report.ts';

/** A file as a build left it. */
export interface LeftFile extends ReportFile {
  inode: number;
  changedMs: number;
}

/** By path below the output folder. */
export type LeftFiles = ReadonlyMap<string, LeftFile>;

export type WriteFile = (path: string, bytes: Uint8Array | string) => void;

export interface StagedFiles {
  /** The hash is worked out when it is left out; `bytes` may be asked for only when they are needed. */
  write(
    path: string,
    bytes: Uint8Array | string | (() => Uint8Array),
    known?: Omit<ReportFile, 'path'>,
  ): void;
  /** Takes a file of the last build along as it is; false where there is none. */
  carry(path: string): boolean;
  /** Counts a file in that somebody else wrote. */
  note(path: string): ReportFile;
  /** Whether the file at a path below the staging folder was linked, and so is on disk already. */
  isCarried(path: string): boolean;
  /** What is known of a file so far. */
  fileAt(path: string): ReportFile | undefined;
}

/** Whether it was linked: where files cannot be, or not so often, they are copied. */
function linkOrCopy(from: string, to: string): boolean {
  mkdirSync(dirname(to), { recursive: true });
  try {
    linkSync(from, to);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    copyFileSync(from, to);
    return false;
  }
}

/** Whether a file still is what a build left there. */
export function isAsLeft(path: string, { bytes, inode, changedMs }: LeftFile): boolean {
  const found = lstatSync(path, { throwIfNoEntry: false });
  return (
    found?.isFile() === true && found.size === bytes && found.ino === inode && found.mtimeMs === changedMs
  );
}

export function stageFiles(
  stagingDir: string,
  outputDir: string,
  left: LeftFiles,
  write: WriteFile,
): StagedFiles {
  const staged = new Map<string, ReportFile>();
  const carried = new Set<string>();
  const carry = (path: string): boolean => {
    const old = left.get(path);
    if (old === undefined || !isAsLeft(join(outputDir, path), old)) return false;
    if (linkOrCopy(join(outputDir, path), join(stagingDir, path))) carried.add(join(stagingDir, path));
    staged.set(path, { path, bytes: old.bytes, sha256: old.sha256 });
    return true;
  };
  return {
    carry,
    isCarried: (path) => carried.has(path),
    write(path, given, known) {
      const read = (): Uint8Array | string => (typeof given === 'function' ? given() : given);
      const facts = known ?? factsOf(read());
      if (left.get(path)?.sha256 === facts.sha256 && carry(path)) return;
      // Never through a link into the old output.
      if (staged.has(path)) rmSync(join(stagingDir, path));
      write(join(stagingDir, path), read());
      staged.set(path, { path, bytes: facts.bytes, sha256: facts.sha256 });
    },
    note(path) {
      const file = { path, ...factsOf(readFileSync(join(stagingDir, path))) };
      staged.set(path, file);
      return file;
    },
    fileAt: (path) => staged.get(path),
  };
}

/** The same files with what tells them from others later; `outputDir` must hold them by now. */
export function leftFiles(outputDir: string, files: readonly ReportFile[]): LeftFiles {
  return new Map(
    files.map((file) => {
      const { ino, mtimeMs } = lstatSync(join(outputDir, file.path));
      return [file.path, { ...file, inode: ino, changedMs: mtimeMs }];
    }),
  );
}
