/**
 * Scripts for the browser, each bundled once for all builds of a process from the modules the build itself runs on.
 * In a checkout they are kept beside the program that the launcher made of the same sources.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { keptScript } from './kept-script.ts';

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
  const known = bundles.get(name) ?? keptScript(name, () => bundle(name));
  bundles.set(name, known);
  return known;
}

/**
 * Parts of the polygon library that nothing here calls (cutting by rectangles, triangles, sweeps) hang on it by one
 * object, so that no bundler can tell: they are left out by name, which is a quarter of the library.
 */
const LEFT_OUT: Record<string, readonly string[]> = {
  RectClip: ['OutPt2', 'RectClip64', 'RectClipLines64'],
  Triangulation: ['TriangulateResult', 'Delaunay'],
  Minkowski: ['Minkowski'],
};

const leanPolygons: Plugin = {
  name: 'lean-polygons',
  setup(builder) {
    builder.onLoad(
      { filter: /clipper2-ts[\\/]dist[\\/](RectClip|Triangulation|Minkowski)\.js$/ },
      ({ path }) => {
        const names = LEFT_OUT[/(\w+)\.js$/.exec(path)?.[1] ?? ''] ?? [];
        return { contents: names.map((one) => `export const ${one} = {};`).join('\n'), loader: 'js' };
      },
    );
  },
};

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
    plugins: [leanPolygons],
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}
