/** The prints and data files that lie beside a site: the site keeps a copy of each. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { BuiltFile } from '../views/downloads.ts';

export interface FileToCopy extends BuiltFile {
  /** In hexadecimal, where it is known. */
  sha256?: string;
  read(): Uint8Array;
}

function namesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory()
      ? namesBelow(join(folder, entry.name)).map((name) => `${entry.name}/${name}`)
      : entry.isFile()
        ? [entry.name]
        : [],
  );
}

/** Files below a part's folder, by name; none when there is no such folder. Paths start with the part's name. */
export function builtFiles(part: 'print' | 'data', folder: string): FileToCopy[] {
  if (!existsSync(folder)) return [];
  return namesBelow(folder)
    .sort()
    .map((name) => ({
      path: `${part}/${name}`,
      byteCount: statSync(join(folder, name)).size,
      read: () => readFileSync(join(folder, name)),
    }));
}
