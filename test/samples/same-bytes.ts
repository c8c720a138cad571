/** Whether two files are the same: compared as bytes, because comparing them as arrays takes seconds a megabyte. */
import { expect } from 'vitest';

/** Fails with the first place at which the files differ. */
export function expectSameBytes(found: Uint8Array, wanted: Uint8Array, name = 'the file'): void {
  if (Buffer.compare(found, wanted) === 0) return;
  const at = found.findIndex((byte, index) => byte !== wanted[index]);
  const around = (bytes: Uint8Array): string =>
    Buffer.from(bytes.subarray(at - 40, at + 40)).toString('latin1');
  expect({ name, bytes: found.length, at, around: around(found) }).toEqual({
    name,
    bytes: wanted.length,
    at: -1,
    around: around(wanted),
  });
}
