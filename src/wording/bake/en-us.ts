import { americanDate } from '../date.ts';
import type { BakeWords } from './bake-words.ts';
import { enGbBake } from './en-gb.ts';

/** American English: a pan where British bakers say tin. */
export const enUsBake: BakeWords = {
  ...enGbBake,
  date: americanDate,
  doneTests:
    'Ready when it springs back under a fingertip, a skewer comes out clean and the edge draws away from the pan. If it is not, give it five minutes more and look again.',
  columns: { ...enGbBake.columns, tin: 'Pan' },
  coreWouldHelp: 'No core on the shelf; one would help in a pan this wide.',
  noCoreTube: 'No core: the tube of the pan does that work.',
  noCoreFoam: 'No core: an egg-white foam climbs bare walls, so bake a wide one in a tube pan.',
  bandOn: 'Band around the pan.',
  cautions: {
    ...enGbBake.cautions,
    core: enGbBake.cautions.core.replace('as hot as the tin', 'as hot as the pan'),
  },
  guide: {
    ...enGbBake.guide,
    tinTime: 'How long in which pan',
    tinTimeText: (height) =>
      `Round pans, ${height} high when baked, each at the dial that suits its size. Logged bakes are brought to this height and heat, so that all can stand in one picture.`,
    across: (unit) => `Pan across, ${unit}`,
    tin: 'Pan',
    factorText: (...told) => enGbBake.guide.factorText(...told).replace(/ tin, /, ' pan, '),
    factorNone: (...told) => enGbBake.guide.factorNone(...told).replace(/ tin, /, ' pan, '),
  },
};
