import { existsSync, realpathSync } from 'node:fs';
import { resolve, sep } from 'node:path';
import type { Problem } from '../domain/problem.ts';
import { usageProblem } from './problem-report.ts';

/** Where content files are when nobody says: in `content`, or right here where the kitchen is this folder itself. */
export function usualContent(): string {
  return !existsSync('content') && existsSync('kitchen.yaml') ? '.' : 'content';
}

/** Where finished prints are kept from build to build: as asked, else as the environment says, else here. */
export const cacheFolder = (asked: string | boolean | undefined): string | null =>
  asked === false
    ? null
    : typeof asked === 'string'
      ? asked
      : (process.env.TINWRIGHT_CACHE ?? '.cache/prints');

/** What is wrong with the two folders of a build, or null. */
export function folderProblem(content: string, output: string): Problem | null {
  if (settled(content) !== settled(output)) return null;
  return usageProblem(
    'output-is-content',
    `--output '${output}' is the folder with the content files ('${content}')`,
    'Choose another folder: a build writes over what is in it.',
  );
}

/** Whether a path is the folder or lies in it. */
export function isWithin(path: string, folder: string): boolean {
  return resolve(path) === resolve(folder) || resolve(path).startsWith(resolve(folder) + sep);
}

function settled(path: string): string {
  return existsSync(path) ? realpathSync(path) : resolve(path);
}
