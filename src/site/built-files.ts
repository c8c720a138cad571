/** The prints and data files that lie beside a site, with their bytes: the site keeps a copy of each. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BuiltFile } from '../views/downloads.ts';

export interface FileWithBytes extends BuiltFile {
  bytes: Uint8Array;
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
export function builtFiles(part: 'print' | 'data', folder: string): FileWithBytes[] {
  if (!existsSync(folder)) return [];
  return namesBelow(folder)
    .sort()
    .map((name) => {
      const bytes = readFileSync(join(folder, name));
      return { path: `${part}/${name}`, byteCount: bytes.byteLength, bytes };
    });
}
