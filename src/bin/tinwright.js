#!/usr/bin/env node
/**
 * Starts the program: straight from the TypeScript sources in a checkout (nothing to compile first), from
 * the compiled code in an installed package. Plain JavaScript, because it runs before either is known.
 */
import { existsSync } from 'node:fs';

const source = new URL('../commands/main.ts', import.meta.url);
const compiled = new URL('../../dist/commands/main.js', import.meta.url);

/** @returns {Promise<{ run(args: string[]): Promise<number> }>} */
async function loadMain() {
  if (!existsSync(source)) return import(compiled.href);
  const { tsImport } = await import('tsx/esm/api');
  return tsImport(source.href, import.meta.url);
}

const { run } = await loadMain();
process.exitCode = await run(process.argv.slice(2));
