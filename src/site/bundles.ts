/** Scripts for the browser, each bundled once for all builds of a process from the modules the build itself runs on. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** Not written in one: the launcher puts each source file's own address in its place. */
const WHERE_AM_I = ['import', 'meta', 'url'].join('.');

/** As TypeScript in the checkout, compiled in a package. */
function entry(name: string): string {
  const place = (extension: string) =>
    fileURLToPath(new URL(`../planner/${name}.${extension}`, import.meta.url));
  return ['tsx', 'ts'].map(place).find(existsSync) ?? place('js');
}

const bundles = new Map<string, Promise<string>>();

/** The text of `src/planner/NAME` with all it imports, as a classic script that also runs from disk. */
export function bundleOf(name: string): Promise<string> {
  const known = bundles.get(name) ?? bundle(name);
  bundles.set(name, known);
  return known;
}

async function bundle(name: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entry(name)],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    // Libraries ask where they are; in a classic script that is the page.
    define: { [WHERE_AM_I]: 'document.baseURI' },
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}
