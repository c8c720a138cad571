/** The files of the booklet, by their names: 'booklet/to-read-a5.pdf' and 'booklet/to-fold-a4.pdf'. */
import type { BookletSlug, DownloadWords } from '../wording/downloads/index.ts';

const NAME = /\/booklet\/(?:[^/]+\/)?(to-read|to-fold)-(a5|half-letter|a4|letter)\.pdf$/;

export const isBookletFile = (path: string): boolean => NAME.test(path);

/** What the file is listed under; null for a file that is no booklet. */
export function bookletEntryName(path: string, { booklet }: DownloadWords): string | null {
  const [, use] = NAME.exec(path) ?? [];
  return use === undefined ? null : use === 'to-read' ? booklet.read : booklet.fold;
}

/** 'PDF, A5'; null for a file that is no booklet. */
export function bookletLinkText(path: string, { booklet, on }: DownloadWords): string | null {
  const [, , size] = NAME.exec(path) ?? [];
  return size === undefined ? null : on('PDF', booklet.sizes[size as BookletSlug]);
}
