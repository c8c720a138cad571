/** The four font files of a house style as bytes: bundled ones by name, the baker's own from the content folder. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isBundledFont } from '../../domain/bundled-fonts.ts';
import type { FontRole, HouseStyle } from '../../domain/house-style.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { readBundledFont } from '../../pdf/bundled-fonts.ts';
import { type FontFile, type LoadedFonts, loadFonts } from '../../pdf/fonts.ts';
import { unpackedFont } from '../../read/unpacked-font.ts';

const ROLES: readonly FontRole[] = ['text', 'textBold', 'textItalic', 'heading'];

/** Files that can be embedded, and the hash that tells them from all others. */
export interface FontFiles {
  files: Record<FontRole, FontFile>;
  hash: string;
}

/** Parsed once, for all documents of a run; problems name the font and the style's file. */
export async function houseFonts(
  style: HouseStyle,
  contentDir: string,
  stylePath: string,
): Promise<Result<LoadedFonts>> {
  const read = await readFontFiles(style, contentDir, stylePath);
  return read.ok ? parsedFonts(read.value, style, stylePath) : read;
}

/** What `readFontFiles` read, ready to draw with. */
export function parsedFonts({ files }: FontFiles, style: HouseStyle, stylePath: string): Result<LoadedFonts> {
  const loaded = loadFonts(files, style.headingCase);
  if (loaded.ok) return loaded;
  return fail(...loaded.problems.map((problem) => ({ ...problem, file: stylePath })));
}

/** Reads and unpacks; whether the fonts are of use shows when they are parsed. */
export async function readFontFiles(
  style: HouseStyle,
  contentDir: string,
  stylePath: string,
): Promise<Result<FontFiles>> {
  const read = await Promise.all(
    ROLES.map(
      async (role): Promise<[FontRole, Result<FontFile>]> => [
        role,
        await embeddable(fontFile(style.fonts[role], contentDir)),
      ],
    ),
  );
  const problems = read.flatMap(([, file]) => (file.ok ? [] : file.problems));
  if (problems.length > 0) return fail(...problems.map((problem) => ({ ...problem, file: stylePath })));
  const found = read.flatMap(([role, file]) => (file.ok ? [[role, file.value] as const] : []));
  const hash = createHash('sha256');
  for (const [role, { name, bytes }] of found) hash.update(`${role} ${name} ${bytes.length}\n`).update(bytes);
  const files = Object.fromEntries(found) as Record<FontRole, FontFile>;
  return succeed({ files, hash: hash.digest('hex') });
}

async function embeddable(file: Result<FontFile>): Promise<Result<FontFile>> {
  if (!file.ok) return file;
  const unpacked = await unpackedFont(file.value);
  if (unpacked !== null) return succeed(unpacked);
  return fail({
    code: 'font-unreadable',
    severity: 'error',
    message: `the font '${file.value.name}' could not be unpacked`,
    hint: 'The download may be broken; give the file again, or the TTF or OTF of the same cut.',
  });
}

function fontFile(name: string, contentDir: string): Result<FontFile> {
  if (isBundledFont(name)) return readBundledFont(name);
  try {
    return succeed({ name, bytes: readFileSync(join(contentDir, name)) });
  } catch {
    return fail({
      code: 'font-missing',
      severity: 'error',
      message: `the font '${name}' is not in the content folder`,
      hint: "Put the TTF, OTF, WOFF or WOFF2 file there, or name a bundled one like 'bundled:Source Sans 3/400Regular'.",
    });
  }
}
