/** British English for the tins' pages. */
import type { TinWords } from './tin-words.ts';

export const enGbTins: TinWords = {
  title: 'The tins',
  description: (kitchen) => `Every tin of ${kitchen}, drawn to one scale.`,
  lead: (tins, sizes) =>
    `${tins} tins in ${sizes} sizes, smallest first. Plan above, side below, all to one scale.`,
  tinDescription: (name, size) => `${name}, ${size}: what it holds and what fills it.`,
  facts: {
    holds: 'Holds, to the rim',
    depth: 'Depth',
    area: 'Area of the rim',
    wall: 'Round the wall',
    material: 'Made of',
    owned: 'On the shelf',
  },
  materials: {
    'bright aluminium': 'bright aluminium',
    dark: 'dark',
    'glass or ceramic': 'glass or ceramic',
    silicone: 'silicone',
    'tinned steel': 'tinned steel',
  },
  scaleAlt: (inches, centimetres) => `Scale: ${inches} inches, ${centimetres} centimetres`,
  noEggs: 'None',
  bunTins: 'For small cakes',
  bunTin: (cups, cup, holds, outside) => `${cups} cups, ${cup}, ${holds} each; ${outside} outside.`,
  bunTinBake: (look, by) => `Look after ${look}, out by ${by}, by the kitchen’s own watch.`,
  lining: {
    base: 'Base',
    tube: 'Tube',
    side: 'Side',
    sides: (count) => `Side, ${count} of these`,
    noPaper: 'No paper',
    baseText: (clearance) => `the shape of the base, ${clearance} smaller all round`,
    strip: (length, height) => `a strip ${length} by ${height}`,
    sector: (inner, outer, degrees) => `part of a ring with radii ${inner} and ${outer}, through ${degrees}°`,
    panel: (foot, head, height) => `${foot} at the foot, ${head} at the head, ${height} high`,
    trace: 'stand the tin on the paper, draw round it and trim to fit',
    curved: 'grease and flour it: flat paper cannot follow the curve',
    unmeasured: 'grease and flour it: its walls are not measured',
  },
};
