/** British English for the papers that an order is worked from. */
import type { PapersWords } from './papers-words.ts';

export const enGbPapers: PapersWords = {
  title: 'Take with you',
  about: 'Where each lies below ‘print’; the end of a file’s name tells its size.',
  kinds: {
    'recipe-card': 'Recipe card',
    'finish-card': 'Finish card',
    'lining-template': 'Lining templates',
    'cutting-guide': 'Cutting guide',
    'stack-sheet': 'Stack sheet',
    'support-template': 'Support template, true size',
    labels: 'Labels and allergen cards',
  },
  forWhom: (name, cakes) => (cakes === '' ? name : `${name}: ${cakes}`),
  nameAndCakes: (name, cakes) => (cakes === '' ? name : `${name} (${cakes})`),
  toSpare: (share) => `with ${share} to spare`,
  trimmings: (grams) => `of which ${grams} is trimmed off`,
  boilsAway: (share) => `${share} of what is weighed boils away`,
  shortAfterFilling: (grams) => `Nothing is left after filling: these weights share a shortfall of ${grams}.`,
  nothingAfterFilling: 'Nothing is left after filling.',
  card: 'Method, and what every tin takes',
};
