import { americanDate } from '../date.ts';
import { enGbImprint } from './en-gb.ts';
import type { ImprintWords } from './imprint-words.ts';

export const enUsImprint: ImprintWords = {
  ...enGbImprint,
  date: americanDate,
  cautions: enGbImprint.cautions.map((text) => text.replace('packets', 'packages')),
};
