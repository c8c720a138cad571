/**
 * Reads one text file below the content folder. Symbolic links, anything over 1 MB and anything that is not
 * UTF-8 are refused: a kitchen's files need none of them.
 */
import { lstat, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { error } from '../parse/problems.ts';
import { quote } from '../parse/quote.ts';

const LARGEST_BYTES = 1_048_576;

export type Found = 'file' | 'folder' | 'link' | 'other' | 'nothing';

/** What stands at a path, without following a symbolic link. */
export async function whatIs(path: string): Promise<Found> {
  try {
    const stat = await lstat(path);
    if (stat.isSymbolicLink()) return 'link';
    return stat.isFile() ? 'file' : stat.isDirectory() ? 'folder' : 'other';
  } catch (thrown) {
    if (isAbsence(thrown)) return 'nothing';
    throw thrown;
  }
}

/** What stands at a path below a folder, with forward slashes; a link anywhere on the way there counts as one. */
export async function whatIsBelow(folder: string, file: string): Promise<Found> {
  const parts = file.split('/');
  let found: Found = 'nothing';
  for (const at of parts.keys()) {
    found = await whatIs(join(folder, ...parts.slice(0, at + 1)));
    if (found !== 'folder') return found === 'link' || at === parts.length - 1 ? found : 'nothing';
  }
  return found;
}

/** The problem of a file that has more bytes than are read of its kind, or null. */
export async function sizeProblem(
  folder: string,
  file: string,
  most: number,
  hint = 'Split it, or take out what does not belong in it.',
): Promise<Problem | null> {
  const { size } = await lstat(join(folder, file));
  if (size <= most) return null;
  const message = `${quote(file)} has ${size} bytes; at most ${most} are read`;
  return { ...error('file-too-large', message, hint), file };
}

function isAbsence(thrown: unknown): boolean {
  return (
    thrown instanceof Error && 'code' in thrown && (thrown.code === 'ENOENT' || thrown.code === 'ENOTDIR')
  );
}

/** The problem of a link where a file or folder of one's own is needed. */
export function linkProblem(file: string): Problem {
  const hint = 'Put the file itself there: links can lead out of the content folder.';
  return { ...error('file-symlink', `${quote(file)} is a symbolic link`, hint), file };
}

async function bytesOf(folder: string, file: string): Promise<Result<Uint8Array>> {
  const found = await whatIsBelow(folder, file);
  if (found === 'link') return fail(linkProblem(file));
  if (found !== 'file') {
    const hint =
      found === 'nothing'
        ? "Create it; the demo kitchen's file of that name shows what goes in."
        : 'A plain file must stand there.';
    return fail({ ...error('file-missing', `There is no file ${quote(file)}`, hint), file });
  }
  const tooLarge = await sizeProblem(folder, file, LARGEST_BYTES);
  return tooLarge === null ? succeed(await readFile(join(folder, file))) : fail(tooLarge);
}

/** The first line that does not decode, counted from 1. */
function badLine(bytes: Uint8Array): number {
  const text = new TextDecoder('utf-8').decode(bytes);
  return text.slice(0, text.indexOf('\ufffd')).split('\n').length;
}

/** The text of a file below a folder; `file` is its path from there, with forward slashes. */
export async function readText(folder: string, file: string): Promise<Result<string>> {
  const bytes = await bytesOf(folder, file);
  if (!bytes.ok) return bytes;
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value));
  } catch {
    const hint = "Save it again with the encoding 'UTF-8'.";
    const problem = error('file-not-utf8', `${quote(file)} is not written in UTF-8`, hint);
    return fail({ ...problem, file, line: badLine(bytes.value), column: 1 });
  }
}
