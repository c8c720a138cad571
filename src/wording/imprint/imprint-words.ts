/** The words of the imprint that goes with a set of prints: who made them, which edition, how to use them. */
import type { DateFormat } from '../date.ts';

export interface ImprintWords {
  date: DateFormat;
  edition: (number: number, date: string, note: string) => string;
  copying: string;
  preparedFor: string;
  site: (address: string) => string;
  printing: string;
  /** What no sheet can promise. */
  cautions: readonly string[];
  files: (count: number) => string;
  checksums: (file: string) => string;
}
