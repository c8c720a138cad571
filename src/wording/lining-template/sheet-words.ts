/** The fixed words of template sheets. */
import type { Locale } from '../../domain/kitchen.ts';
import { inAmerican } from '../american.ts';
import { americanDate, britishDate } from '../date.ts';

export interface TemplateLabels {
  sheet(sheet: number, sheets: number): string;
  edition(date: string): string;
  check: string;
  notFoodSafe: string;
  caution: string;
  partOf(piece: string, tin: string): string;
  foldInHalf: string;
  foldInFour: string;
  /** Alternative text of a part's figure. */
  figure(piece: string, part: string, joins: string[]): string;
  pieces: string;
  piece: string;
  cut: string;
  size: string;
  sheets: string;
  sheetList(first: number, last: number): string;
  howTo: string;
  steps: { print: string; lines: string; join: string; fold: string };
  papers: string;
  bookmarks: Record<'lining' | 'levelling' | 'board' | 'supports', string>;
  printTitle(title: string): string;
}

const enGb: TemplateLabels = {
  sheet: (sheet, sheets) => `Sheet ${sheet} of ${sheets}`,
  edition: (date) => `Edition ${britishDate(date)}`,
  check: 'Print at 100 %, no scaling: this bar measures 100 mm.',
  notFoodSafe: 'A pattern for cutting baking paper, not itself food safe.',
  caution: 'Caution',
  partOf: (piece, tin) => `${piece}, ${tin}`,
  foldInHalf: 'Or fold the baking paper, lay the fold on the line to join, and cut from one sheet.',
  foldInFour:
    'Or fold the baking paper in four, lay both folds on the lines to join, and cut from one sheet.',
  figure: (piece, part, joins) =>
    part === ''
      ? `${piece}, at true size`
      : `${piece}, part ${part} at true size; ${joins.length === 1 ? 'joint' : 'joints'} ${joins.join(', ')}`,
  pieces: 'What to cut',
  piece: 'Piece',
  cut: 'Cut',
  size: 'Size',
  sheets: 'Sheets',
  sheetList: (first, last) => (first === last ? `${first}` : `${first}–${last}`),
  howTo: 'How to use the patterns',
  steps: {
    print:
      'Print only the sheets you need, at 100 %, with no scaling and no fitting to the page. Lay a ruler on the bar at the foot of each sheet: it must measure 100 mm.',
    lines:
      'Cut along the solid lines. Short dashes show the rim, the lap or the layers; long dashes are joints.',
    join: 'Joints carry the names of their two parts, such as A1–A2. Trim one part along the long dashes, lay it on the other so that the crosses meet, and tape.',
    fold: 'A pattern that is the same on both sides of a joint can stay in parts: lay the fold of your baking paper on the joint.',
  },
  papers: 'About these papers',
  bookmarks: {
    lining: 'Lining papers',
    levelling: 'Levelling strip',
    board: 'Cake board',
    supports: 'Supports',
  },
  printTitle: (title) => `${title} – sizes in words on sheet 1`,
};

const byLocale: Record<Locale, TemplateLabels> = {
  'en-GB': enGb,
  'en-US': {
    ...inAmerican(enGb),
    edition: (date) => `Edition ${americanDate(date)}`,
    check: 'Print at 100 %, no scaling: this bar measures 100 mm, 3 15/16 in.',
    steps: {
      ...inAmerican(enGb.steps),
      print: inAmerican(enGb.steps).print.replace('100 mm', '100 mm, 3 15/16 in'),
    },
  },
};

export const templateLabelsFor = (locale: Locale): TemplateLabels => byLocale[locale];
