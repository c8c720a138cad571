/**
 * The fonts that come with the package, found by the name a house style gives them: family, slash, cut, as in
 * 'Source Sans 3/400Regular'. Open fonts (OFL 1.1), static cuts.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { FontFile } from './fonts.ts';

const PREFIX = 'bundled:';
const families: Record<string, string> = {
  'Source Sans 3': 'source-sans-3',
  'Source Serif 4': 'source-serif-4',
};
// Resolved as any import is, so that it also works where this package is itself installed.
const resolve = createRequire(import.meta.url).resolve;

export const isBundledFont = (name: string): boolean => name.startsWith(PREFIX);

const problem = (name: string, hint: string): Problem => ({
  code: 'font-not-bundled',
  severity: 'error',
  message: `there is no bundled font '${name.slice(PREFIX.length)}'`,
  hint,
});

function cutsOf(folder: string): string[] {
  return readdirSync(folder).filter((name) => /^\d{3}/.test(name));
}

/** Reads 'bundled:Family/Cut'. Problem: font-not-bundled, naming what there is. */
export function readBundledFont(name: string): Result<FontFile> {
  const [family = '', cut = ''] = name.slice(PREFIX.length).split('/');
  const packageName = families[family];
  if (!packageName)
    return fail(
      problem(
        name,
        `Bundled families: ${Object.keys(families).join(', ')}; a cut follows, as in '/400Regular'.`,
      ),
    );
  const folder = dirname(resolve(`@expo-google-fonts/${packageName}/package.json`));
  const file = join(folder, cut, `${family.replaceAll(' ', '')}_${cut}.ttf`);
  if (cut === '' || !existsSync(file))
    return fail(problem(name, `Cuts of ${family}: ${cutsOf(folder).join(', ')}.`));
  return succeed({ name, bytes: readFileSync(file) });
}
