/** US English for wall references. */
import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { withUsSizeHeads } from '../us-heads.ts';
import { enGbWall } from './en-gb.ts';
import type { WallWords } from './wall-words.ts';

const gb = withUsSizeHeads(inAmerican(enGbWall));

export const enUsWall: WallWords = {
  ...gb,
  date: americanDate,
  eggLadder: { ...gb.eggLadder, note: 'Weights of everything else: on the pan chart’s egg ladder.' },
  oven: {
    ...gb.oven,
    conventional: 'Regular',
    fahrenheit: 'Regular',
    fan: 'Convection',
    note: 'Convection is 25 °F lower. °C to the nearest ten. Common practice; no standard fixes it.',
    caution: 'Dials are often 20 °F out, and more. Trust a thermometer that stands in the oven.',
  },
  tins: {
    ...gb.tins,
    title: 'What the pans hold',
    lead: (recipe) => `Water to the rim, and one pan’s batter for ${recipe}.`,
    note: 'Batter before eggs are made whole: weigh from the pan chart.',
  },
  finish: { ...gb.finish, title: (finish) => `${finish}: for each pan`, tin: 'Pan' },
  scale: (scale) => `8 in; pans drawn 1 : ${scale}`,
};
