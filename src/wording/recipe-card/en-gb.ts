import { britishDate } from '../date.ts';
import type { RecipeCardWords } from './recipe-card-words.ts';

export const enGbCards: RecipeCardWords = {
  date: britishDate,
  oven: 'Oven',
  finishedHeight: 'Finished height',
  eggs: 'Eggs',
  batter: 'Batter',
  fill: 'Fill to, mm',
  dial: 'Dial',
  firstLook: 'First look',
  doneBy: 'Done by',
  core: 'Heating core',
  coreIn: 'in',
  coreOut: 'none',
  band: 'Insulated band',
  bandOn: 'on',
  inOven: (tin, dial, firstLook, doneBy, core, band) =>
    `${tin}: ${dial}, first look ${firstLook}, done by ${doneBy}${core ? ', heating core in' : ''}${band ? ', band on' : ''}.`,
  inTheOven: 'In the oven',
  earlierLook: 'Where the method gives other times, take the earlier first look.',
  ready: 'Ready',
  notes: 'Notes',
  caution: 'Caution',
  check: 'Check',
  method: 'Method',
  weightsIn: (unit) => `Weights in ${unit}`,
  working: 'Working',
  workingOf: (name) => `How the figures for ${name} were worked out`,
  card: (card, cards) => `card ${card} of ${cards}`,
  continued: (name) => `${name}, continued`,
  edition: (date) => `Edition ${date}`,
  subject: (recipe) => `${recipe}: weights for a few tins, method, oven, and how to tell that it is done.`,
  title: (recipe, size) => `${recipe}: recipe cards, ${size}`,
  sizes: {
    A5: 'A5',
    A6: 'A6',
    'index 3 x 5 in': '3 × 5 in',
    'index 4 x 6 in': '4 × 6 in',
    'index 5 x 8 in': '5 × 8 in',
  },
  givesTimes: /\d[½¼¾]? (minutes|hours)\b/,
  listsAllergens: /^:?\s*contains [^.;]*(\.|$)\s*/i,
  alreadySaid: {
    'raw-batter': [/\braw\b/i, /\begg/i, /\bflour/i, /\btaste/i],
    'hot-tins': [/\bhot\b|\bheat\b/i, /\btins?\b/i],
  },
  sheets: {
    title: (size, paper, ending) =>
      `Recipe cards ${size} to cut from ${paper}; to search or have read aloud, open the recipe’s own file that ends in ${ending}`,
    subject: (size, files) =>
      `Every recipe card in ${size}, several to a sheet, with marks to cut by. The same cards to search or have read aloud: ${files}.`,
    front: 'fronts',
    back: 'backs',
    turn: {
      long: 'Print both sides, turning on the long edge, at 100 %.',
      short: 'Print both sides, turning on the short edge, at 100 %.',
    },
  },
};
