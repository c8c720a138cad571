/** The files of the fonts that come with the package, found by the name a house style gives them. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { BUNDLED_CUTS, BUNDLED_FAMILIES, bundledFont, isKnownBundledFont } from '../domain/bundled-fonts.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { FontFile } from './fonts.ts';

// Resolved as any import is, so that it also works where this package is itself installed.
const resolve = createRequire(import.meta.url).resolve;

/** Reads 'bundled:Family/Cut'. Problem: font-not-bundled, naming what there is. */
export function readBundledFont(name: string): Result<FontFile> {
  const font = bundledFont(name);
  const { family, cut } = font;
  if (!isKnownBundledFont(font))
    return fail({
      code: 'font-not-bundled',
      severity: 'error',
      message: `there is no bundled font '${family}/${cut}'`,
      hint: `Bundled families: ${BUNDLED_FAMILIES.join(', ')}; their cuts: ${BUNDLED_CUTS.join(', ')}.`,
    });
  const file = `${family.replaceAll(' ', '')}_${cut}.ttf`;
  const packageName = family.toLowerCase().replaceAll(' ', '-');
  return succeed({
    name,
    bytes: readFileSync(resolve(`@expo-google-fonts/${packageName}/${cut}/${file}`)),
  });
}
