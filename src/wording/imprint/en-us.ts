import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { enGbImprint } from './en-gb.ts';
import type { ImprintWords } from './imprint-words.ts';

export const enUsImprint: ImprintWords = { ...inAmerican(enGbImprint), date: americanDate };
