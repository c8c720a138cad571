/** Where a site's files go, and what is known of those that are there. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { sha256 } from '../read/sha256.ts';

/** What is known of a file without reading it. */
export interface KnownFile {
  bytes: number;
  /** In hexadecimal. */
  sha256: string;
}

/** Paths are below the site's folder, with forward slashes. */
export interface SiteOutput {
  write(path: string, bytes: Uint8Array | string | (() => Uint8Array), known?: KnownFile): void;
  /** Takes a file of the last build along as it is; false where there is none. */
  carry(path: string): boolean;
  /** SHA-256 of a file that is there, in hexadecimal. */
  hashOf(path: string): string;
}

/** A folder that knows nothing of earlier builds. */
export const folderOutput = (folder: string): SiteOutput => ({
  write(path, bytes) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), typeof bytes === 'function' ? bytes() : bytes);
  },
  carry: () => false,
  hashOf: (path) => sha256(readFileSync(join(folder, path))),
});
