/** The files of recipe cards, by their names: 'recipe-cards/ID-a6.pdf' and 'recipe-cards/to-cut-a6-a4.pdf'. */
import type { CardSlug, DownloadWords } from '../wording/downloads/index.ts';

const NAME = /\/recipe-cards\/(?:[^/]+\/)?([^/]+?)-(a5|a6|3x5in|4x6in|5x8in)(?:-(a4|letter))?\.pdf$/;
const SEVERAL = 'to-cut';

interface CardFile {
  /** The recipe's id; null for all cards several to a sheet. */
  recipeId: string | null;
  slug: CardSlug;
  paper: string | null;
}

function cardFile(path: string): CardFile | null {
  const [, name, slug, paper] = NAME.exec(path) ?? [];
  if (name === undefined || slug === undefined) return null;
  const several = name === SEVERAL && paper !== undefined;
  return { recipeId: several ? null : name, slug: slug as CardSlug, paper: paper ?? null };
}

/** What the file is listed under; null for a file that is no recipe card. */
export function cardEntryName(path: string, { cards }: DownloadWords): string | null {
  const file = cardFile(path);
  return file === null ? null : (file.recipeId ?? cards.several);
}

/** 'PDF, A6'; 'PDF, A6 to cut from A4'; null for a file that is no recipe card. */
export function cardLinkText(path: string, { cards, papers }: DownloadWords): string | null {
  const file = cardFile(path);
  if (file === null) return null;
  const size = cards.sizes[file.slug];
  return file.recipeId === null
    ? cards.toCut(size, papers[file.paper === 'letter' ? 'letter' : 'a4'])
    : cards.one(size);
}

/** The usual cards of one recipe in the kitchen's own style, in the order of their names. */
export function filesOfCards<T extends { path: string }>(recipeId: string, files: readonly T[]): T[] {
  return files
    .filter(({ path }) => path.startsWith('print/recipe-cards/') && path.split('/').length === 3)
    .filter(({ path }) => cardFile(path)?.recipeId === recipeId);
}
