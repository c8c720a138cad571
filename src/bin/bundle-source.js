/**
 * The TypeScript of a checkout as a few JavaScript files, made when it is first run after a change and kept below
 * `.cache/run` under the hash of every source file: what is kept can never be older than what it was made from.
 * The checksum of each file stands beside it, so that one cut short by a full disk or a power cut is made again.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const source = join(root, 'src');
const kept = join(root, '.cache', 'run');
/** What programs start from; all share one set of files. */
const ENTRIES = ['commands/main', 'commands/make/print-worker', 'eleventy'];
const CHECKSUMS = 'checksums.json';
const HOUR_MS = 3600 * 1000;
const OLD_MS = 24 * HOUR_MS;
const MOST_KEPT = 12;

/** @returns {string[]} */
function typescriptBelow(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return typescriptBelow(path);
    return entry.name.endsWith('.ts') && !entry.name.endsWith('.d.ts') ? [path] : [];
  });
}

function sourceHash() {
  const hash = createHash('sha256');
  const packages = ['package.json', 'node_modules/esbuild/package.json'].map((name) => join(root, name));
  for (const path of [fileURLToPath(import.meta.url), ...packages, ...typescriptBelow(source).sort()])
    hash
      .update(`${relative(root, path)}\0`)
      .update(readFileSync(path))
      .update('\0');
  return hash.digest('hex').slice(0, 20);
}

/** Every file still knows where its own source lies: fonts and templates are found from there. */
const placesKept = {
  name: 'places-kept',
  /** @param {import('esbuild').PluginBuild} build */
  setup(build) {
    build.onLoad({ filter: /\.ts$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      const contents = text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href));
      return { contents, loader: 'ts' };
    });
  },
};

/** @param {string} path */
const checksum = (path) => createHash('sha256').update(readFileSync(path)).digest('hex');

/** @param {string} folder */
function writeChecksums(folder) {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.mjs'),
  );
  const checksums = Object.fromEntries(names.map((name) => [name, checksum(join(folder, name))]));
  writeFileSync(join(folder, CHECKSUMS), JSON.stringify(checksums));
}

/** Whether a kept bundle is there with every byte it was made with. @param {string} folder */
function isWhole(folder) {
  try {
    const checksums = Object.entries(JSON.parse(readFileSync(join(folder, CHECKSUMS), 'utf8')));
    return checksums.length > 0 && checksums.every(([name, sum]) => checksum(join(folder, name)) === sum);
  } catch {
    return false;
  }
}

/** @param {string} folder */
async function bundleInto(folder) {
  const { build } = await import('esbuild');
  const making = `${folder}.${process.pid}.${Date.now()}`;
  await build({
    absWorkingDir: root,
    entryPoints: ENTRIES.map((entry) => join(source, `${entry}.ts`)),
    outbase: source,
    outdir: making,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    sourcemap: 'linked',
    logLevel: 'silent',
    plugins: [placesKept],
    outExtension: { '.js': '.mjs' },
  });
  writeChecksums(making);
  try {
    renameSync(making, folder);
  } catch (error) {
    // Another process was quicker: its files are the same.
    rmSync(making, { recursive: true, force: true });
    if (!isWhole(folder)) throw error;
  }
}

/** Not the younger ones: a watching process may still load from them. */
function removeOld() {
  const ages = readdirSync(kept).map((name) => {
    const path = join(kept, name);
    return { path, ageMs: Date.now() - statSync(path).mtimeMs };
  });
  const youngestFirst = ages.sort((a, b) => a.ageMs - b.ageMs);
  for (const [rank, { path, ageMs }] of youngestFirst.entries())
    if (ageMs > OLD_MS || (rank >= MOST_KEPT && ageMs > HOUR_MS))
      rmSync(path, { recursive: true, force: true });
}

/** Folder with the JavaScript of all programs, made first where the sources have changed. */
export async function bundledSource() {
  const folder = join(kept, sourceHash());
  if (!isWhole(folder)) {
    rmSync(folder, { recursive: true, force: true });
    await bundleInto(folder);
    removeOld();
  }
  return folder;
}

/**
 * Address of one program.
 * @param {string} folder
 * @param {string} entry as in 'commands/main'
 */
export const programIn = (folder, entry) => pathToFileURL(join(folder, `${entry}.mjs`)).href;
