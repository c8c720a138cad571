/**
 * The planner's scripts: its code in one classic script, and the kitchen's content in another, so that both also
 * run from disk. The code is bundled from the very modules that the build computes with.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Content } from '../domain/content.ts';
import { plannerContent } from '../views/planner-content.ts';
import type { Asset } from './site-assets.ts';

export const PLANNER_SCRIPT = 'script/planner.js';
export const PLANNER_DATA = 'script/planner-data.js';

/** As TypeScript in the checkout, compiled in a package. */
function entry(): string {
  const source = fileURLToPath(new URL('../planner/main.tsx', import.meta.url));
  return existsSync(source) ? source : fileURLToPath(new URL('../planner/main.js', import.meta.url));
}

let bundled: Promise<string> | undefined;

async function bundle(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entry()],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

/** A script may hold any text, but no tag that would end it, and no line end that old engines refuse. */
const scriptJson = (value: unknown): string =>
  JSON.stringify(value).replace(
    /[<\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** The two scripts; the code is bundled once for all builds of a process. */
export async function plannerAssets(content: Content): Promise<Asset[]> {
  bundled ??= bundle();
  return [
    { path: PLANNER_SCRIPT, bytes: await bundled },
    { path: PLANNER_DATA, bytes: `window.tinwrightContent=${scriptJson(plannerContent(content))};\n` },
  ];
}
