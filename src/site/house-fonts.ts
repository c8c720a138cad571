/**
 * The house's own font files, cut down to the characters the site uses and written into one stylesheet, so
 * that pages ask nobody for fonts and look the same from disk (where a page may not fetch a font file).
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import subsetFont from 'subset-font';
import type { FontRole, HouseStyle } from '../domain/house-style.ts';
import { unpackedFont } from '../read/unpacked-font.ts';
import { meanwhileCss } from './meanwhile-fonts.ts';

export type FontBytes = Record<FontRole, Uint8Array>;

const ROLES: readonly FontRole[] = ['text', 'textBold', 'textItalic', 'heading'];
const BUNDLED = /^bundled:(.+)\/([^/]+)$/;
const FACES: Record<FontRole, string> = {
  text: 'font-family: house-text; font-weight: 400; font-style: normal',
  textBold: 'font-family: house-text; font-weight: 700; font-style: normal',
  textItalic: 'font-family: house-text; font-weight: 400; font-style: italic',
  heading: 'font-family: house-heading; font-weight: 400; font-style: normal',
};
const BASIC = Array.from({ length: 95 }, (_, index) => String.fromCharCode(32 + index)).join('');
/** Marks that scripts and stylesheets add to the page's own text. */
const MARKS = '£°×÷–—‘’“”…′″½¼¾⅓⅔⅛⅜⅝⅞−·→↑↓›√π²³≈≤≥éèêçñöüä';

/** 'bundled:Source Sans 3/400Regular' is a file of the package of that family. */
function bundledFile(family: string, cut: string): string {
  const kebab = family.toLowerCase().replaceAll(' ', '-');
  const file = `${family.replaceAll(' ', '')}_${cut}.ttf`;
  return createRequire(import.meta.url).resolve(`@expo-google-fonts/${kebab}/${cut}/${file}`);
}

/** Reads the four font files that a house style names; throws when one cannot be read. */
export async function readHouseFonts(style: HouseStyle, contentDir: string): Promise<FontBytes> {
  const read = async (role: FontRole): Promise<Uint8Array> => {
    const [, family, cut] = BUNDLED.exec(style.fonts[role]) ?? [];
    return readFile(family && cut ? bundledFile(family, cut) : join(contentDir, style.fonts[role]));
  };
  const [text, textBold, textItalic, heading] = await Promise.all([
    read('text'),
    read('textBold'),
    read('textItalic'),
    read('heading'),
  ]);
  return { text, textBold, textItalic, heading };
}

/** The same fonts as files that a print can embed; throws when one cannot be unpacked. */
export async function embeddableFonts(
  fonts: FontBytes,
  style: HouseStyle,
): Promise<Record<FontRole, { name: string; bytes: Uint8Array }>> {
  const unpacked = async (role: FontRole) => {
    const font = await unpackedFont({ name: style.fonts[role], bytes: fonts[role] });
    if (font === null) throw new Error(`the font '${style.fonts[role]}' could not be unpacked`);
    return font;
  };
  const [text, textBold, textItalic, heading] = await Promise.all(ROLES.map(unpacked));
  if (!text || !textBold || !textItalic || !heading) throw new Error('four fonts were asked for');
  return { text, textBold, textItalic, heading };
}

/** Every character of the site's text, once each, in code-point order, with basic Latin and the usual marks. */
export function charactersOf(text: string): string {
  const points = new Set<number>();
  for (const part of [BASIC, MARKS, text]) addCodePoints(part, points);
  return String.fromCodePoint(...[...points].filter((point) => point >= 32).sort((a, b) => a - b));
}

const CODES = 0x10000;

/** Each code is looked at once: the text of a single page is millions of characters long. */
function addCodePoints(text: string, points: Set<number>): void {
  const seen = new Uint8Array(CODES);
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (seen[code] === 1) continue;
    const point = text.codePointAt(at) ?? 32;
    if (point > 0xffff) at++;
    // Half of a pair may stand before another one next time.
    else seen[code] = 1;
    points.add(point);
  }
}

/** Cutting and packing is much of a small site's time: a watching process, or a font in two roles, does it once. */
const cut = new Map<string, Promise<string>>();
const MOST_CUT = 16;

function cutDown(font: Uint8Array, characters: string): Promise<string> {
  const key = createHash('sha256').update(font).update(characters).digest('hex');
  const known = cut.get(key);
  if (known !== undefined) return known;
  if (cut.size >= MOST_CUT) cut.clear();
  const fresh = packed(font, characters);
  cut.set(key, fresh);
  return fresh;
}

/** As base64 WOFF2. */
async function packed(font: Uint8Array, characters: string): Promise<string> {
  const bytes = await subsetFont(Buffer.from(font), characters, {
    targetFormat: 'woff2',
    keepFeatures: ['kern', 'mark', 'tnum', 'lnum', 'smcp'],
    noHinting: true,
  });
  return bytes.toString('base64');
}

/** One @font-face for each role, the font inside as base64 WOFF2, and what stands in until it is unpacked. */
export async function fontsCss(fonts: FontBytes, characters: string): Promise<string> {
  const faces: string[] = [];
  for (const role of ROLES) {
    const source = `url(data:font/woff2;base64,${await cutDown(fonts[role], characters)}) format("woff2")`;
    faces.push(`@font-face { ${FACES[role]}; font-display: block; src: ${source}; }\n`);
  }
  return faces.join('') + meanwhileCss(fonts);
}
