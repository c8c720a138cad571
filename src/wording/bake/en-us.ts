import type { BakeWords } from './bake-words.ts';
import { enGbBake } from './en-gb.ts';

/** American English: a pan where British bakers say tin. */
export const enUsBake: BakeWords = {
  ...enGbBake,
  doneTests:
    'Ready when it springs back under a fingertip, a skewer comes out clean and the edge draws away from the pan. If it is not, give it five minutes more and look again.',
  columns: { ...enGbBake.columns, tin: 'Pan' },
  coreWouldHelp: 'No core on the shelf; one would help in a pan this wide.',
  bandOn: 'Band around the pan.',
  cautions: {
    ...enGbBake.cautions,
    core: enGbBake.cautions.core.replace('as hot as the tin', 'as hot as the pan'),
  },
  guide: {
    ...enGbBake.guide,
    tinTime: 'How long in which pan',
    tinTimeText: (dial, height) => `Round pans at ${dial}, ${height} high when baked.`,
    across: (unit) => `Pan across, ${unit}`,
    tin: 'Pan',
    factorText: (share, low, high) =>
      `In this oven the recipe takes ${share} of a plain sponge’s time in an eight-inch pan (between ${low} and ${high}).`,
  },
};
