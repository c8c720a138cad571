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
  const path = join(folder, file);
  const found = await whatIs(path);
  if (found === 'link') return fail(linkProblem(file));
  if (found !== 'file') {
    const hint =
      found === 'nothing'
        ? "Create it; the demo kitchen's file of that name shows what goes in."
        : 'A plain file must stand there.';
    return fail({ ...error('file-missing', `There is no file ${quote(file)}`, hint), file });
  }
  const { size } = await lstat(path);
  if (size <= LARGEST_BYTES) return succeed(await readFile(path));
  const message = `${quote(file)} has ${size} bytes; at most ${LARGEST_BYTES} are read`;
  return fail({
    ...error('file-too-large', message, 'Split it, or take out what does not belong in it.'),
    file,
  });
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
