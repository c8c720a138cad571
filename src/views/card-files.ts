/** The files of cards, by their names: 'recipe-cards/ID-a6.pdf', 'recipe-cards/to-cut-a6-a4.pdf', 'finish-cards/ID-a6.pdf'. */
import type { CardSlug, DownloadWords } from '../wording/downloads/index.ts';

const NAME =
  /\/(?:recipe|finish)-cards\/(?:[^/]+\/)?([^/]+?)-(a5|a6|3x5in|4x6in|5x8in)(?:-(a4|letter))?\.pdf$/;
const SEVERAL = 'to-cut';

interface CardFile {
  /** The recipe's or the finish's id; null for all cards several to a sheet. */
  ofId: string | null;
  slug: CardSlug;
  paper: string | null;
}

function cardFile(path: string): CardFile | null {
  const [, name, slug, paper] = NAME.exec(path) ?? [];
  if (name === undefined || slug === undefined) return null;
  const several = name === SEVERAL && paper !== undefined;
  return { ofId: several ? null : name, slug: slug as CardSlug, paper: paper ?? null };
}

/** What the file is listed under; null for a file that is no card. */
export function cardEntryName(path: string, { cards }: DownloadWords): string | null {
  const file = cardFile(path);
  return file === null ? null : (file.ofId ?? cards.several);
}

/** 'PDF, A6'; 'PDF, A6 to cut from A4'; null for a file that is no card. */
export function cardLinkText(path: string, { cards, papers }: DownloadWords): string | null {
  const file = cardFile(path);
  if (file === null) return null;
  const size = cards.sizes[file.slug];
  return file.ofId === null
    ? cards.toCut(size, papers[file.paper === 'letter' ? 'letter' : 'a4'])
    : cards.one(size);
}

/** The usual cards of one recipe or finish in the kitchen's own style, in the order of their names. */
function filesOf<T extends { path: string }>(folder: string, id: string, files: readonly T[]): T[] {
  return files
    .filter(({ path }) => path.startsWith(`print/${folder}/`) && path.split('/').length === 3)
    .filter(({ path }) => cardFile(path)?.ofId === id);
}

export const filesOfCards = <T extends { path: string }>(recipeId: string, files: readonly T[]): T[] =>
  filesOf('recipe-cards', recipeId, files);

export const filesOfFinishCards = <T extends { path: string }>(finishId: string, files: readonly T[]): T[] =>
  filesOf('finish-cards', finishId, files);

export const isFinishCard = (path: string): boolean => /(^|\/)finish-cards\//.test(path);
