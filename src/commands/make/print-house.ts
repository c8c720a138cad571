/** What all prints of a run have in common: the house styles with their fonts, and what stands in every file's head. */
import { isBundledFont } from '../../domain/bundled-fonts.ts';
import type { Content } from '../../domain/content.ts';
import type { HouseStyle } from '../../domain/house-style.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { programVersion } from '../version.ts';
import { type FontFiles, parsedFonts, readFontFiles } from './house-fonts.ts';

export interface Dress {
  style: HouseStyle;
  /** Folder of a further style's prints, with its slash; empty for the kitchen's own. */
  folder: string;
  /** Where the style was written, for problems. */
  file: string;
  fonts: FontFiles;
}

/** Plain data, so that it can be handed to another thread. */
export interface PrintHouse {
  /** The kitchen's own style first. */
  dresses: Dress[];
  /** ISO date of the files. */
  edition: string;
  author: string;
  producer: string;
}

const stylesOf = ({ houseStyle, houseStyles }: Content): Omit<Dress, 'fonts'>[] => [
  { style: houseStyle, folder: '', file: 'house-style.yaml' },
  ...houseStyles.map(({ id, style }) => ({ style, folder: `in-${id}/`, file: `house-styles/${id}.yaml` })),
];

async function dressed(style: Omit<Dress, 'fonts'>, contentDir: string): Promise<Result<Dress>> {
  const fonts = await readFontFiles(style.style, contentDir, style.file);
  if (!fonts.ok) return fonts;
  // Bundled fonts are known to be sound; the baker's own are looked at even if nothing is to be drawn with them.
  const isOwn = Object.values(style.style.fonts).some((name) => !isBundledFont(name));
  const parsed = isOwn ? parsedFonts(fonts.value, style.style, style.file) : fonts;
  return parsed.ok ? succeed({ ...style, fonts: fonts.value }) : parsed;
}

/** Problems: a font that is not there or cannot be read, each once. */
export async function printHouse(content: Content, contentDir: string): Promise<Result<PrintHouse>> {
  const read = await Promise.all(stylesOf(content).map((style) => dressed(style, contentDir)));
  const problems = read.flatMap((dress) => (dress.ok ? [] : dress.problems));
  if (problems.length > 0) return fail(...problems);
  return succeed({
    dresses: read.flatMap((dress) => (dress.ok ? [dress.value] : [])),
    edition: content.kitchen.edition,
    author: content.kitchen.name,
    producer: `Tinwright ${programVersion()}`,
  });
}
