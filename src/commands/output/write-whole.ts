import { renameSync, rmSync, writeFileSync } from 'node:fs';

/** Written beside and renamed into place: readers see all of a file or nothing. Throws what the disk says. */
export function writeWhole(path: string, bytes: Uint8Array): void {
  const beside = `${path}.${process.pid}.part`;
  try {
    writeFileSync(beside, bytes);
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
