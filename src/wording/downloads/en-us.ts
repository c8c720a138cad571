/** American English for files to print and keep: Letter is the paper one has. */
import { americanText, inAmerican } from '../american.ts';
import type { DownloadWords } from './download-words.ts';
import { enGbDownloads } from './en-gb.ts';

const gb = inAmerican(enGbDownloads);

export const enUsDownloads: DownloadWords = {
  ...gb,
  plain: americanText,
  papers: { ...gb.papers, letter: 'Letter' },
  booklet: { ...gb.booklet, sizes: { ...gb.booklet.sizes, 'half-letter': 'half Letter', letter: 'Letter' } },
};
