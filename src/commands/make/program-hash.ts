/**
 * Which program is this? The hash of its own code, and of the names and versions of the packages it draws with. The
 * launcher of a checkout has hashed the sources that run; otherwise all code files below the program's folder are
 * hashed once in a process.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

/** src/ or dist/. */
const CODE = fileURLToPath(new URL('../../', import.meta.url));

/** Where the launcher of a checkout keeps what it runs, under the hash of all sources. */
const BUNDLES = join(CODE, '..', '.cache', 'run');

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.[jt]sx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

function codeHash(): string {
  const running = process.env.TINWRIGHT_BUNDLE;
  // Inherited from another installation it says nothing about this one.
  if (running !== undefined && dirname(running) === BUNDLES) return basename(running);
  const hash = createHash('sha256');
  for (const path of filesBelow(CODE)) hash.update(`${relative(CODE, path)}\0`).update(readFileSync(path));
  return hash.digest('hex');
}

interface Manifest {
  name: string;
  version: string;
  dependencies: Record<string, string>;
}

function manifestIn(folder: string): Manifest | null {
  const path = join(folder, 'package.json');
  if (!existsSync(path)) return null;
  const {
    name = '',
    version = '',
    dependencies = {},
  } = JSON.parse(readFileSync(path, 'utf8')) as Partial<Manifest>;
  return { name, version, dependencies };
}

/** The folder of an installed package as one that lies in `from` finds it. */
function packageFolder(name: string, from: string): string | null {
  const here = join(from, 'node_modules', name);
  if (existsSync(here)) return realpathSync(here);
  return dirname(from) === from ? null : packageFolder(name, dirname(from));
}

/** All packages that the program can load, with their versions. */
function installed(): string[] {
  const found = new Map<string, string>();
  const waiting = [join(CODE, '..')];
  for (let folder = waiting.pop(); folder !== undefined; folder = waiting.pop()) {
    if (found.has(folder)) continue;
    const manifest = manifestIn(folder);
    found.set(folder, `${manifest?.name}@${manifest?.version}`);
    for (const name of Object.keys(manifest?.dependencies ?? {})) {
      const below = packageFolder(name, folder);
      if (below !== null) waiting.push(below);
    }
  }
  return [...new Set(found.values())].sort();
}

let known: string | undefined;

/** The same for the same program, wherever it is installed. */
export function programHash(): string {
  known ??= createHash('sha256')
    .update(JSON.stringify([codeHash(), installed()]))
    .digest('hex');
  return known;
}
