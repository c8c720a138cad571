/** The words of the finishing chart's tables, by locale; apart, as only chart and pages need them. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';

interface TableTitle {
  title: string;
  about: string;
}

export interface FinishingTableWords {
  between: TableTitle;
  dams: TableTitle;
  around: TableTitle;
  over: TableTitle;
  under: TableTitle & {
    columns: { coated: string; board: string; box: string; ribbon: string; paper: string };
  };
  buy: (pack: string) => string;
  across: (size: string) => string;
  high: (size: string) => string;
  /** Heads the list of what each finish is made of. */
  madeOf: string;
}

const enGb: FinishingTableWords = {
  between: {
    title: 'Between the layers',
    about: 'Grams to make for all joints together, inside the dam; in small type what ends up in the cake.',
  },
  dams: {
    title: 'The dam, and syrup',
    about: 'Grams to make for the bead piped round every joint, and for syrup on one face of every layer.',
  },
  around: {
    title: 'Around and on top',
    about: 'Grams to make for all coats together; in small type what ends up on the cake.',
  },
  over: { title: 'Rolled over', about: 'Grams to roll out, the size to roll to, and what to buy.' },
  under: {
    title: 'Board, box, ribbon and paper',
    about: 'For the cake once it is coated. Paper is the strip that lines the tin’s side.',
    columns: {
      coated: 'Coated cake',
      board: 'Board',
      box: 'Box',
      ribbon: 'Ribbon',
      paper: 'Paper strip for the tin',
    },
  },
  buy: (pack) => `buy ${pack}`,
  across: (size) => `${size} across`,
  high: (size) => `${size} high`,
  madeOf: 'What they are made of',
};

const LOCALES: Record<Locale, FinishingTableWords> = {
  'en-GB': enGb,
  'en-US': withUsHeads(inAmerican(enGb)),
};

/** The words of the tables in a locale. */
export const finishingTableWordsFor = (locale: Locale): FinishingTableWords => LOCALES[locale];
