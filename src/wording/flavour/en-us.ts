/** American English for flavors. */
import { inAmerican } from '../american.ts';
import { formatOunces } from '../ounces.ts';
import { enGbFlavour } from './en-gb.ts';
import type { FlavourWords } from './flavour-words.ts';

/** A pound of batter in kilograms: amounts for one are so much of those for the other. */
const KG_PER_LB = 0.45359237;

export const enUsFlavour: FlavourWords = {
  ...inAmerican(enGbFlavour),
  addPerKg: (grams, entry) =>
    `Add ${entry}, ${formatOunces(Number(grams) * KG_PER_LB)} oz to each pound of batter.`,
};
