/** American English: the same booklet, with pans for tins. Names that the baker gave are never touched. */
import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { withUsHeads } from '../us-heads.ts';
import type { BookletWords } from './booklet-words.ts';
import { enGbBooklet } from './en-gb.ts';

const gb = withUsHeads(inAmerican(enGbBooklet));

export const enUsBooklet: BookletWords = {
  ...gb,
  date: americanDate,
  title: (kitchen) => `${kitchen}: cakes by the pan`,
  subject: (kitchen) =>
    `The recipes of ${kitchen} with weights and whole eggs for every pan, flavors, fillings and coatings, and the tables that go with them.`,
  tins: {
    ...gb.tins,
    holds: 'Holds, cups',
  },
};
