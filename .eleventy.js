/**
 * Wires the site into Eleventy, nothing else: `npx eleventy` and `npx eleventy --serve` give the same pages as
 * the whole build. From the TypeScript sources in a checkout, from the compiled code in an installed package.
 */
import { existsSync } from 'node:fs';

const source = new URL('src/eleventy.ts', import.meta.url);
const compiled = new URL('dist/eleventy.js', import.meta.url);

async function loadWiring() {
  if (!existsSync(source)) return import(compiled.href);
  const { tsImport } = await import('tsx/esm/api');
  return tsImport(source.href, import.meta.url);
}

export default async function configure(config) {
  const { wireKitchen } = await loadWiring();
  return wireKitchen(config);
}
