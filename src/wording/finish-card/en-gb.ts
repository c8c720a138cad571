/** British English for finish cards. */
import { numberInWords } from '../locales/english-numbers.ts';
import type { FinishCardWords } from './finish-card-words.ts';

const MOST_IN_WORDS = 10;

export const enGbFinishCards: FinishCardWords = {
  makes: 'Makes',
  batches: (unit) => `A batch, ${unit}`,
  uses: 'Use',
  spare: (share) => `with ${share} to spare for bowl, bag and scraper`,
  spareOfPoured: (share) => `over the coat below it, with ${share} to spare for what runs off`,
  boilsAway: (share) => `${share} of what is weighed boils away.`,
  bought: 'Bought ready made: nothing is weighed for it.',
  forTins: (unit) => `To make, ${unit}`,
  toRoll: (unit) => `To roll out, ${unit}`,
  forTinsAbout: (height, layers) =>
    `For a cake ${height} high in ${numberInWords(layers, MOST_IN_WORDS)} ${layers === 1 ? 'layer' : 'layers'}`,
  sheet: (size) => `to ${size}`,
  everyTin: 'Every tin',
  everyTinOf: (name) => `${name}: what to make for every tin`,
  title: (name, size) => `${name}: finish card, ${size}`,
  subject: (name) =>
    `${name}: batches by weight, how it is made, how long it keeps, and how much a tin’s cake takes.`,
  tellsOfHeat: /\b(hot|boil\w*|burn\w*|scald\w*)\b/i,
};
