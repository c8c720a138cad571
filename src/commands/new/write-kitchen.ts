/** Writes the files of a new kitchen; what was written before a failure is taken away again. */
import { existsSync, mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Problem } from '../../domain/problem.ts';
import type { MadeFile } from '../make/made-file.ts';
import { usageProblem } from '../problem-report.ts';

/** What is wrong with a folder for a new kitchen, or null: it may be missing, or empty. */
export function newFolderProblem(folder: string): Problem | null {
  if (!existsSync(folder)) return null;
  if (!statSync(folder).isDirectory())
    return usageProblem(
      'new-not-a-folder',
      `'${folder}' is a file, expected a folder that is empty or not there yet`,
      "Name another one, like 'tinwright new my-kitchen'.",
    );
  const names = readdirSync(folder);
  if (names.length === 0) return null;
  const others = names.length > 1 ? ` and ${names.length - 1} more` : '';
  return usageProblem(
    'new-folder-not-empty',
    `'${folder}' is not empty: it holds '${names.sort()[0]}'${others}`,
    'Name a folder that is empty or not there yet: nothing is ever written over.',
  );
}

/** Throws what the disk throws. */
export function writeKitchen(folder: string, files: readonly MadeFile[]): void {
  const made: string[] = [];
  const makeFolder = (path: string): void => {
    const first = mkdirSync(path, { recursive: true });
    if (first !== undefined) made.push(first);
  };
  try {
    for (const { path, bytes } of files) {
      const target = join(folder, path);
      makeFolder(dirname(target));
      // Never over a file that somebody has put there meanwhile.
      writeFileSync(target, bytes, { flag: 'wx' });
      made.push(target);
    }
  } catch (error) {
    for (const path of made.reverse()) rmSync(path, { recursive: true, force: true });
    throw error;
  }
}
