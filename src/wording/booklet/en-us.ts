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
  ruler: `3 15/16 in (100 mm) when printed at 100 %`,
  use: {
    ...gb.use,
    points: {
      ...gb.use.points,
      ounces: { ...gb.use.points.ounces, text: 'are in ounces, with level cups and spoons beside them.' },
    },
  },
  recipe: { ...gb.recipe, inSpoons: 'in cups, spoons' },
  tins: {
    ...gb.tins,
    note: 'To match one of these with a pan of your own, fill yours with cups of water. A pan that holds the same takes the same batter, if it is about as deep.',
    holds: 'Holds, cups',
  },
};
