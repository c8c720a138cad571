/**
 * The service worker of a published site: everything but the PDFs is kept on the device at the first visit, by name
 * and content hash; then the tin charts on the kitchen's own paper; another PDF once opened, or when asked for. A new edition is fetched beside the old one, takes over
 * only what has changed, and waits until the reader asks for it.
 */
import { createHash } from 'node:crypto';
import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

export const WORKER = 'offline-worker.js';

export interface KeptFile {
  path: string;
  hash: string;
}

/** Files that are kept at once; large prints are kept as they are opened. */
const isKept = (path: string): boolean => path !== WORKER && !path.endsWith('.pdf');

/** Addresses of all files below the site's folder that are kept, in their order. */
export async function keptPaths(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter(isKept)
    .sort();
}

/** Tin charts on the kitchen's own paper: small, and what one bakes from. They come after everything else. */
export async function ownPrints(folder: string, paper: string): Promise<string[]> {
  const charts = 'files/print/tin-charts';
  const names = await readdir(join(folder, charts)).catch(() => []);
  return names
    .filter((name) => name.endsWith(`-${paper.toLowerCase()}.pdf`))
    .map((name) => `${charts}/${name}`)
    .sort();
}

/** A file by its hash, as long as telling apart needs. */
export const keptFile = (path: string, sha256: string): KeptFile => ({ path, hash: sha256.slice(0, 16) });

/** The worker's text; `code` is the bundled worker, which finds the list in front of it. */
export function workerScript(files: readonly KeptFile[], prints: readonly KeptFile[], code: string): string {
  const edition = createHash('sha256')
    .update([...files, ...prints].map(({ path, hash }) => `${path} ${hash}`).join('\n'))
    .update(code)
    .digest('hex')
    .slice(0, 16);
  const list = (all: readonly KeptFile[]): string =>
    JSON.stringify(Object.fromEntries(all.map(({ path, hash }) => [path, hash])));
  return `self.tinwrightEdition=${JSON.stringify(edition)};self.tinwrightFiles=${list(files)};self.tinwrightPrints=${list(prints)};\n${code}`;
}
