/**
 * What a kept print is found by: the hash of everything that can change its bytes. Its pieces' text says what is on
 * it; beside that only the style, the very font files, what stands in the file's head, and the program itself.
 * Not in it: the engine's version and the clock, which the bytes do not depend on.
 */
import { sha256 } from '../../read/sha256.ts';
import type { PrintHouse } from './print-house.ts';
import type { PrintTask } from './print-tasks.ts';
import { programHash } from './program-hash.ts';

/** Gives each task of a house its key. */
export function printKeys({ dresses, ...head }: PrintHouse): (task: PrintTask) => string {
  const looks = dresses.map(({ style, folder, fonts }) =>
    JSON.stringify([programHash(), head, style, folder, fonts.hash]),
  );
  // A piece is asked about in each house style, one after the other.
  let last = { input: '', hash: sha256('') };
  return ({ dress, piece: { kind, folder, input } }) => {
    if (last.input !== input) last = { input, hash: sha256(input) };
    return sha256(JSON.stringify([looks[dress], kind, folder, last.hash]));
  };
}
