/** The words of links to files, and of the page that lists them. A missing key does not compile. */

/** Papers as they stand in file names. */
export type DownloadPaper = 'a4' | 'letter' | 'a3' | 'a2' | '11x17' | '17x22';
export type CardSlug = 'a5' | 'a6' | '3x5in' | '4x6in' | '5x8in';
export type BookletSlug = 'a5' | 'half-letter' | 'a4' | 'letter';
/** Folders of prints and data that are listed by a name of their own. */
export type DownloadFolder =
  | 'tin-charts'
  | 'egg-ladders'
  | 'finishing'
  | 'bake-guides'
  | 'recipe-cards'
  | 'finish-cards'
  | 'booklet'
  | 'wall'
  | 'orders'
  | 'weeks'
  | 'labels'
  | 'cutting-guides'
  | 'portions'
  | 'templates';

export interface DownloadWords {
  title: string;
  description: string;
  papers: Record<DownloadPaper, string>;
  /** A large sheet to be joined from small ones. */
  toJoin: (sheet: string, home: string) => string;
  eggLadder: (kind: string) => string;
  stacks: (kind: string) => string;
  on: (what: string, paper: string) => string;
  charts: { title: string; about: string };
  folders: Record<DownloadFolder, string>;
  inStyle: (title: string, style: string) => string;
  /** A file's name as words: 'tin volumes'. */
  plain: (name: string) => string;
  trueSize: string;
  booklet: { about: string; read: string; fold: string; sizes: Record<BookletSlug, string> };
  cards: {
    about: string;
    aboutFinishes: string;
    several: string;
    sizes: Record<CardSlug, string>;
    one: (size: string) => string;
    toCut: (size: string, paper: string) => string;
  };
}
