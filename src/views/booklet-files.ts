/** The files of the booklet, by their names: 'booklet/to-read-a5.pdf' and 'booklet/to-fold-a4.pdf'. */
import { BOOKLET_FILE_WORDS as WORDS } from '../wording/booklet/booklet-file-words.ts';

const NAME = /\/booklet\/(?:[^/]+\/)?(to-read|to-fold)-(a5|half-letter|a4|letter)\.pdf$/;

export const isBookletFile = (path: string): boolean => NAME.test(path);

/** What the file is listed under; null for a file that is no booklet. */
export function bookletEntryName(path: string): string | null {
  const [, use] = NAME.exec(path) ?? [];
  return use === undefined ? null : use === 'to-read' ? WORDS.read : WORDS.fold;
}

/** 'PDF, A5'; null for a file that is no booklet. */
export function bookletLinkText(path: string): string | null {
  const [, , size] = NAME.exec(path) ?? [];
  return size === undefined ? null : WORDS.link(WORDS.sizes[size] ?? size);
}
