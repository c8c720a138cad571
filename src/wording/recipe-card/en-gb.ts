import type { RecipeCardWords } from './recipe-card-words.ts';

export const enGbCards: RecipeCardWords = {
  oven: 'Oven',
  finishedHeight: 'Finished height',
  eggs: 'Eggs',
  batter: 'Batter',
  fill: 'Fill to, mm',
  tin: 'Tin',
  firstLook: 'First look',
  doneBy: 'Done by',
  ready: 'Ready',
  notes: 'Notes',
  caution: 'Caution',
  check: 'Check',
  method: 'Method',
  weightsFor: 'Weights in g',
  card: (card, cards) => `card ${card} of ${cards}`,
  continued: (name) => `${name}, continued`,
  edition: (date) => `Edition ${date}`,
  subject: (recipe) => `${recipe}: weights for a few tins, method, oven, and how to tell that it is done.`,
  title: (recipe, size) => `${recipe}: recipe card, ${size}`,
  sizes: {
    A5: 'A5',
    A6: 'A6',
    'index 3 x 5 in': '3 × 5 in',
    'index 4 x 6 in': '4 × 6 in',
    'index 5 x 8 in': '5 × 8 in',
  },
  sheets: {
    title: (size, paper, accessible) =>
      `Recipe cards ${size} to cut from ${paper}. To search or have read aloud, open ${accessible}`,
    subject: (size) => `Every recipe card in ${size}, several to a sheet, with marks to cut by.`,
    front: 'fronts',
    back: 'backs',
    turn: {
      long: 'Print both sides, turning on the long edge, at 100 %.',
      short: 'Print both sides, turning on the short edge, at 100 %.',
    },
  },
};
