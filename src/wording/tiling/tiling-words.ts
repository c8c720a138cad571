/** The words of large sheets printed on home paper and joined. A missing key does not compile. */
import type { PaperName } from '../../domain/kitchen.ts';

export interface TilingWords {
  papers: Record<PaperName, string>;
  /** Names the file that can be read aloud. */
  title: (title: string, paper: string, sheetName: string, file: string) => string;
  subject: (file: string) => string;
  join: (lapMm: number) => string;
  sheet: (sheet: number, sheets: number) => string;
}
