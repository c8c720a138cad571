/** American English: the differences from British; units and papers follow the kitchen. */
import { americanAround, inAmerican } from '../american.ts';
import { cupsText } from '../cups.ts';
import { americanDate } from '../date.ts';
import type { Words } from '../words.ts';
import { enGB } from './en-GB.ts';

const gb = inAmerican(enGB);

export const enUS: Words = {
  ...gb,
  date: americanDate,
  locale: 'en-US',
  units: { mass: 'oz', height: 'in' },
  cups: true,
  // As their law calls them, and their labels.
  allergens: { ...gb.allergens, nuts: 'tree nuts', crustaceans: 'crustacean shellfish' },
  sizeNotes: {
    ...gb.sizeNotes,
    water: (millilitres) => `holds ${cupsText(Number(millilitres.replaceAll(',', '')))} cups`,
  },
  warning: americanAround,
};
