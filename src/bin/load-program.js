/**
 * Loads a part of the program: from the TypeScript sources in a checkout (nothing to compile first), from the
 * compiled code in an installed package. Plain JavaScript, because it runs before either is known.
 */
import { existsSync } from 'node:fs';

/**
 * @param {string} entry as in 'commands/main'
 * @returns {Promise<any>}
 */
export async function loadProgram(entry) {
  if (!existsSync(new URL(`../${entry}.ts`, import.meta.url)))
    return import(new URL(`../../dist/${entry}.js`, import.meta.url).href);
  // Errors then name the lines of the sources.
  process.setSourceMapsEnabled(true);
  const { bundledSource } = await import('./bundle-source.js');
  return import(await bundledSource(entry));
}
