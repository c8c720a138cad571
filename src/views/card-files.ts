/** The files of recipe cards, by their names: 'recipe-cards/ID-a6.pdf' and 'recipe-cards/to-cut-a6-a4.pdf'. */
import { CARD_FILE_SIZES, CARD_FILE_WORDS } from '../wording/recipe-card/card-file-words.ts';

const NAME = /\/recipe-cards\/(?:[^/]+\/)?([^/]+?)-(a5|a6|3x5in|4x6in|5x8in)(?:-(a4|letter))?\.pdf$/;
const SEVERAL = 'to-cut';

interface CardFile {
  /** The recipe's id; null for all cards several to a sheet. */
  recipeId: string | null;
  slug: string;
  paper: string | null;
}

function cardFile(path: string): CardFile | null {
  const [, name, slug, paper] = NAME.exec(path) ?? [];
  if (name === undefined || slug === undefined) return null;
  const several = name === SEVERAL && paper !== undefined;
  return { recipeId: several ? null : name, slug, paper: paper ?? null };
}

/** What the file is listed under; null for a file that is no recipe card. */
export function cardEntryName(path: string): string | null {
  const file = cardFile(path);
  return file === null ? null : (file.recipeId ?? CARD_FILE_WORDS.several);
}

/** 'PDF, A6'; 'PDF, A6 to cut from A4'; null for a file that is no recipe card. */
export function cardLinkText(path: string): string | null {
  const file = cardFile(path);
  if (file === null) return null;
  const size = CARD_FILE_SIZES[file.slug] ?? file.slug;
  return file.recipeId === null
    ? CARD_FILE_WORDS.toCut(size, file.paper === 'letter' ? 'US Letter' : 'A4')
    : CARD_FILE_WORDS.one(size);
}

/** The usual cards of one recipe in the kitchen's own style, in the order of their names. */
export function filesOfCards<T extends { path: string }>(recipeId: string, files: readonly T[]): T[] {
  return files
    .filter(({ path }) => path.startsWith('print/recipe-cards/') && path.split('/').length === 3)
    .filter(({ path }) => cardFile(path)?.recipeId === recipeId);
}
