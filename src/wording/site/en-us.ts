/** American English for the site's own pages. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbSite } from './en-gb.ts';
import type { SiteWords } from './site-words.ts';

const gb = withUsHeads(inAmerican(enGbSite));

export const enUsSite: SiteWords = {
  ...gb,
  flavour: {
    ...gb.flavour,
    caption: (before, after) => gb.flavour.caption(before, after).replace('Grams', 'Ounces'),
  },
  finishing: {
    ...gb.finishing,
    partsAbout: (spare, poured) => gb.finishing.partsAbout(spare, poured).replace('Grams', 'Ounces'),
  },
  chart: {
    ...gb.chart,
    caption: (hasEggs) => `Weights in ounces${hasEggs ? '; eggs are shelled and counted whole' : ''}.`,
    poured: (ounces, several) => `${ounces} oz in ${several ? 'each' : 'the pan'}`,
    gramsLeft: (weight) => `${weight} oz left`,
    gramsShort: (weight) => `${weight} oz short`,
  },
};
