/**
 * Loads a part of the program: from the TypeScript sources in a checkout (nothing to compile first), from the
 * compiled code in an installed package. Plain JavaScript, because it runs before either is known.
 */
import { existsSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { isMainThread } from 'node:worker_threads';

/** Tells a thread which bundle its program runs from: the sources may have changed since that started. */
const BUNDLE = 'TINWRIGHT_BUNDLE';

/**
 * Fonts and pictures are made by WebAssembly. The engine compiles its busy functions a second time, for speed that a
 * build ends too soon to gain by: about a second of the other core, for a small kitchen a third of all. So it waits a
 * hundred times as long as it would (roughly the bytes a function has run); what a large kitchen keeps busy is still
 * compiled again. Either way the same bytes come out.
 */
const PATIENT_WEBASSEMBLY = '--wasm-tiering-budget=180000000';

/**
 * @param {string} entry as in 'commands/main'
 * @returns {Promise<any>}
 */
export async function loadProgram(entry) {
  if (isMainThread) setFlagsFromString(PATIENT_WEBASSEMBLY);
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
