import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import type { BakeWords } from './bake-words.ts';
import { enGbBake } from './en-gb.ts';

const gb = inAmerican(enGbBake);

/** American English: a pan where British bakers say tin. */
export const enUsBake: BakeWords = {
  ...gb,
  date: americanDate,
  dial: { fan: (heat) => `${heat} convection`, gas: null },
  baked: (ounces) => `about ${ounces} oz when baked`,
  classes: {
    sponge: 'a butter or sponge cake',
    'very light': 'a foam cake',
    'dense butter': 'a pound cake',
    'dense chocolate': 'a dense, moist cake',
    'rich fruit': 'a fruitcake',
  },
  guide: { ...gb.guide, edge: 'Edge, 3/16 in from the wall' },
  noCoreFoam: 'No core: an egg-white foam climbs bare walls, so bake a wide one in a tube pan.',
  bandOn: 'Band around the pan.',
};
