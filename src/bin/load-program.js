/**
 * Loads a part of the program: from the TypeScript sources in a checkout (nothing to compile first), from the
 * compiled code in an installed package. Plain JavaScript, because it runs before either is known.
 */
import { existsSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

/** Tells a thread which bundle its program runs from: the sources may have changed since that started. */
const BUNDLE = 'TINWRIGHT_BUNDLE';

/**
 * @param {string} entry as in 'commands/main'
 * @returns {Promise<any>}
 */
export async function loadProgram(entry) {
  const source = new URL(`../${entry}.ts`, import.meta.url);
  if (!existsSync(source)) return import(new URL(`../../dist/${entry}.js`, import.meta.url).href);
  const bundle = await bundleOf(entry);
  if (bundle !== null) return import(bundle);
  const { tsImport } = await import('tsx/esm/api');
  return tsImport(source.href, import.meta.url);
}

/**
 * Null where the sources cannot be bundled: a folder that may not be written, or a file that is half written just
 * now. File by file the program may still do what it is asked.
 * @param {string} entry
 */
async function bundleOf(entry) {
  const { bundledSource, programIn } = await import('./bundle-source.js');
  const running = isMainThread ? undefined : process.env[BUNDLE];
  try {
    const folder = running ?? (await bundledSource());
    process.env[BUNDLE] = folder;
    const bundle = programIn(folder, entry);
    // Errors then name the lines of the sources.
    process.setSourceMapsEnabled(true);
    return bundle;
  } catch {
    return null;
  }
}
