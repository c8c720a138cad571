/**
 * The planner's scripts: its code in one classic script, and the kitchen's content in another, so that both also
 * run from disk. The code is bundled from the very modules that the build computes with.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Content } from '../domain/content.ts';
import type { FontRole, HouseStyle } from '../domain/house-style.ts';
import { plannerContent } from '../views/planner-content.ts';
import type { Asset } from './site-assets.ts';

export const PLANNER_SCRIPT = 'script/planner.js';
export const PLANNER_DATA = 'script/planner-data.js';
export const PRINT_SCRIPT = 'script/print.js';
export const READER_SCRIPT = 'script/kitchen.js';
export const PRINT_DATA = 'script/print-data.js';

/** As TypeScript in the checkout, compiled in a package. */
function entry(name: string): string {
  const place = (extension: string) =>
    fileURLToPath(new URL(`../planner/${name}.${extension}`, import.meta.url));
  return ['tsx', 'ts'].map(place).find(existsSync) ?? place('js');
}

/** Code that is bundled once for all builds of a process. */
const bundles = new Map<string, Promise<string>>();

function bundleOf(name: string): Promise<string> {
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

/** Not written in one: the launcher puts each source file's own address in its place. */
const WHERE_AM_I = ['import', 'meta', 'url'].join('.');

/** A script may hold any text, but no tag that would end it, and no line end that old engines refuse. */
const scriptJson = (value: unknown): string =>
  JSON.stringify(value).replace(
    /[<\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** What the print shop needs of the house beside the content. */
export interface PrintHouse {
  style: HouseStyle;
  /** Font files that can be embedded. */
  fonts: Record<FontRole, { name: string; bytes: Uint8Array }>;
  producer: string;
}

function printData({ style, fonts, producer }: PrintHouse): unknown {
  const font = (role: FontRole) => ({
    name: fonts[role].name,
    base64: Buffer.from(fonts[role].bytes).toString('base64'),
  });
  const all = {
    text: font('text'),
    textBold: font('textBold'),
    textItalic: font('textItalic'),
    heading: font('heading'),
  };
  return { style, producer, fonts: all };
}

/** The planner's two scripts, and the two of the print shop that are fetched when somebody prints. */
export async function plannerAssets(content: Content, house: PrintHouse): Promise<Asset[]> {
  const [planner, print, reader] = await Promise.all(['main', 'print-main', 'kitchen-reader'].map(bundleOf));
  return [
    { path: PLANNER_SCRIPT, bytes: planner ?? '' },
    { path: PLANNER_DATA, bytes: `window.tinwrightContent=${scriptJson(plannerContent(content))};\n` },
    { path: PRINT_SCRIPT, bytes: print ?? '' },
    { path: READER_SCRIPT, bytes: reader ?? '' },
    { path: PRINT_DATA, bytes: `window.tinwrightPrintData=${scriptJson(printData(house))};\n` },
  ];
}
