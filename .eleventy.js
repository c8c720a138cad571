/**
 * Wires the site into Eleventy, nothing else: `npx eleventy` and `npx eleventy --serve` give the same pages as
 * the whole build. From the TypeScript sources in a checkout, from the compiled code in an installed package.
 */
import { loadProgram } from './src/bin/load-program.js';

export default async function configure(config) {
  const { wireKitchen } = await loadProgram('eleventy');
  return wireKitchen(config);
}
