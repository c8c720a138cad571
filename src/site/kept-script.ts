/**
 * A script for the browser, kept below the folder that the launcher names for exactly these sources (see
 * src/bin/load-program.js), under the hash of the packages installed and with its own checksum before it. A package
 * has no such folder: there it is made each time.
 */
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sha256 } from '../read/sha256.ts';

/** Where it is kept, or null where nothing says that the sources are the same. */
function placeOf(name: string): string | null {
  const folder = process.env.TINWRIGHT_BUNDLE;
  if (folder === undefined) return null;
  const installed = fileURLToPath(new URL('../../node_modules/.package-lock.json', import.meta.url));
  try {
    return join(folder, 'browser', sha256(readFileSync(installed)).slice(0, 20), `${name}.js`);
  } catch {
    return null;
  }
}

/** Null where it is not there, or not with every byte it was kept with. */
function readKept(place: string): string | null {
  try {
    const [sum = '', ...lines] = readFileSync(place, 'utf8').split('\n');
    const text = lines.join('\n');
    return sha256(text) === sum ? text : null;
  } catch {
    return null;
  }
}

/** A cache that cannot be written is no reason to stop. */
function keep(place: string, text: string): void {
  const draft = `${place}.${process.pid}`;
  try {
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(draft, `${sha256(text)}\n${text}`);
    renameSync(draft, place);
  } catch {}
}

/** The script kept under this name, or made now and kept. */
export async function keptScript(name: string, make: () => Promise<string>): Promise<string> {
  const place = placeOf(name);
  const kept = place === null ? null : readKept(place);
  if (kept !== null) return kept;
  const text = await make();
  if (place !== null) keep(place, text);
  return text;
}
