/** The words of files to print and keep, by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import type { DownloadWords } from './download-words.ts';
import { enGbDownloads } from './en-gb.ts';
import { enUsDownloads } from './en-us.ts';

export type {
  BookletSlug,
  CardSlug,
  DownloadFolder,
  DownloadPaper,
  DownloadWords,
} from './download-words.ts';

const LOCALES: Record<Locale, DownloadWords> = { 'en-GB': enGbDownloads, 'en-US': enUsDownloads };

/** The words of files in a locale. */
export const downloadWordsFor = (locale: Locale): DownloadWords => LOCALES[locale];
