/** British English for files to print and keep. */
import type { DownloadWords } from './download-words.ts';

const CUTTING = 'Portions and cutting guides';

export const enGbDownloads: DownloadWords = {
  title: 'To print and keep',
  description: 'Everything that can be printed or opened in a spreadsheet.',
  papers: {
    a4: 'A4',
    letter: 'US Letter',
    a3: 'A3',
    a2: 'A2',
    '11x17': '11 × 17 in',
    '17x22': '17 × 22 in',
  },
  toJoin: (sheet, home) => `${sheet} to join from ${home}`,
  eggLadder: (kind) => `Egg ladder ${kind}`,
  stacks: (kind) => `Stacks ${kind}`,
  on: (what, paper) => `${what}, ${paper}`,
  charts: {
    title: 'Tin charts',
    about: 'For the kitchen wall, in each paper, and the same figures for a spreadsheet.',
  },
  folders: {
    'tin-charts': 'Tin charts',
    'egg-ladders': 'Egg ladders',
    finishing: 'Fillings and coatings',
    'bake-guides': 'Baking times',
    'recipe-cards': 'Recipe cards',
    'finish-cards': 'Finish cards',
    booklet: 'Booklet',
    wall: 'Wall references',
    orders: 'Orders',
    weeks: 'Orders',
    labels: 'Labels',
    'cutting-guides': CUTTING,
    portions: CUTTING,
    templates: 'Lining templates and cutting guides',
  },
  inStyle: (title, style) => `${title}, in the style ‘${style}’`,
  plain: (name) => name,
  trueSize: 'PDF at its true size.',
  booklet: {
    about:
      'All recipes, flavours, finishes and tables in one small book: to read on a screen, and to print at home. Print the file to fold on both sides, turned on the short edge, at 100 %; fold the stack and staple it in the fold.',
    read: 'To read',
    fold: 'To print, fold and staple',
    sizes: { a5: 'A5', 'half-letter': 'half US Letter', a4: 'A4', letter: 'US Letter' },
  },
  cards: {
    about:
      'Cards for the tin drawer, each recipe with its flavours: fronts and backs in turn, to print on both sides at 100 %.',
    aboutFinishes:
      'Cards for the tin drawer, one for each filling and coating: batches by weight, method and keeping, to print on one side at 100 %.',
    several: 'All cards, several to a sheet',
    sizes: { a6: 'A6', a5: 'A5', '3x5in': '3 × 5 in', '4x6in': '4 × 6 in', '5x8in': '5 × 8 in' },
    one: (size) => `PDF, ${size}`,
    toCut: (size, paper) => `PDF, ${size} to cut from ${paper}`,
  },
};
