/** American English: the differences from British, so far the words only; units and papers follow the kitchen. */
import { americanDate } from '../date.ts';
import type { Words } from '../words.ts';
import { enGB } from './en-GB.ts';

export const enUS: Words = {
  ...enGB,
  date: americanDate,
  locale: 'en-US',
  tin: { one: 'pan', many: 'pans' },
  fairyCakes: (count) => (count === 1 ? '1 small cupcake' : `${count} small cupcakes`),
  sizeNotes: {
    ...enGB.sizeNotes,
    alt: (shape, across, depth) => `${shape} pan, ${across} and ${depth} deep`,
  },
};
