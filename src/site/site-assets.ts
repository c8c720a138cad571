/** Everything of the site that is no page: styles, fonts, scripts, the icon, and copies of the built files. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { HouseStyle } from '../domain/house-style.ts';
import { houseCss } from './house-css.ts';
import { charactersOf, type FontBytes, fontsCss } from './house-fonts.ts';
import { safeSvg } from './logo.ts';
import { ICON_PATH } from './site-data.ts';
import type { KnownFile, SiteOutput } from './site-output.ts';

export interface Asset {
  /** Below the site's folder, with forward slashes. */
  path: string;
  bytes: Uint8Array | string | (() => Uint8Array);
  known?: KnownFile;
}

/** The templates travel beside the code, compiled or not. */
export const TEMPLATES = fileURLToPath(new URL('../../templates/', import.meta.url));

async function templateFiles(folder: string): Promise<{ name: string; text: string }[]> {
  const names = (await readdir(join(TEMPLATES, folder))).sort();
  return Promise.all(
    names.map(async (name) => ({ name, text: await readFile(join(TEMPLATES, folder, name), 'utf8') })),
  );
}

/** Sheets that hold on every page start with a number; the others are linked where they are needed. */
const isCommon = (name: string): boolean => /^\d/.test(name);

/** All assets; `text` is every character that a page may show. */
export async function siteAssets(
  style: HouseStyle,
  fonts: FontBytes,
  logoSvg: string | null,
  text: string,
): Promise<Asset[]> {
  const sheets = await templateFiles('style');
  const scripts = await templateFiles('script');
  const common = sheets.filter((sheet) => isCommon(sheet.name)).map((sheet) => sheet.text);
  return [
    { path: 'style/site.css', bytes: [houseCss(style), ...common].join('\n') },
    { path: 'style/fonts.css', bytes: await fontsCss(fonts, charactersOf(text)) },
    ...sheets
      .filter((sheet) => !isCommon(sheet.name))
      .map((sheet) => ({ path: `style/${sheet.name}`, bytes: sheet.text })),
    ...scripts.map((script) => ({ path: `script/${script.name}`, bytes: script.text })),
    ...(logoSvg === null ? [] : [{ path: ICON_PATH, bytes: safeSvg(logoSvg, null) }]),
  ];
}

/** Writes assets. */
export function writeAssets(output: SiteOutput, assets: readonly Asset[]): void {
  for (const { path, bytes, known } of assets) output.write(path, bytes, known);
}
