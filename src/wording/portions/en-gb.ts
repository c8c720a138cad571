/** British English for portions and cutting guides. */
import type { PortionsWords } from './portions-words.ts';

export const enGbPortions: PortionsWords = {
  title: 'Portions',
  guides: 'Cutting guides',
  summary: 'How many each cake serves, how to cut it, and which tins to stack for a number of guests.',
  size: (name, short, long) => `${name}, ${short} × ${long}`,
  sizeNames: { dessert: 'Dessert', finger: 'Finger' },
  inRows: 'In rows',
  inRings: 'In rings',
  whole: (count) => `${count} whole`,
  ringDetail: (slices, hasCore) => [...slices, ...(hasCore ? ['1'] : [])].join(' + '),
  guideAlt: (tin, count, size) => `${tin} from above, cut in rows: ${count} pieces, ${size}.`,
  ringAlt: (tin, count, circles) =>
    circles.length === 0
      ? `${tin} from above, cut from the middle: ${count} pieces.`
      : `${tin} from above, cut in rings: ${count} pieces; the knife goes round at ${circles.join(' and ')} from the middle.`,
  circles: (radii) => `Round at ${radii.join(' and ')} from the middle.`,
  stacksTitle: 'Which tins for how many',
  stacksAbout: (recipe) =>
    `Dessert portions, fewest left over first. Batter and eggs are for ${recipe}, each tier from one tin baked to the recipe’s own height.`,
  wanted: 'Guests',
  stackOf: 'Tiers, bottom first',
  portions: 'Portions',
  over: 'Over',
  exactly: 'none',
  batter: 'Batter, g',
  eggs: 'Eggs',
  height: 'Height',
  ingredients: 'Ingredients',
  noStack: 'More than these tins can serve in one stack: bake a cake for cutting beside it.',
  stack: (tins) => tins.join(', '),
  asked: (wanted, size, recipe, keepsTopTier) =>
    `${wanted} portions (${size}) of ${recipe}, fewest over first${keepsTopTier ? ', the top tier kept back' : ''}:`,
  caution: 'Caution',
  more: 'There are more ways than are shown.',
  notes: {
    counted:
      'Pieces of three quarters and more are counted; what is smaller is the baker’s. The grid lies where it gives most.',
    rings:
      'Rings are as deep as a portion is long, cut from the edge inwards; slices are measured on the middle line of their ring.',
    stacks: (step) =>
      `A tier stands on another with ${step} to spare across, corners included. Rings, domes and shapes without a full plan are left out of stacks.`,
    bakes: 'Tall tiers of several bakes give the same number of portions, in taller slices.',
    owned: 'Only tins on the shelf are counted.',
  },
  cautions: {
    inside:
      'Say what is inside before it is cut: supports, dowel, wires and ribbon come out first, tier by tier from the top.',
    supports: 'Only supports and boards made to touch food go into a cake.',
  },
  leftOut: (tin) => `${tin}: known only by the water it holds, so nobody can say how it is cut.`,
  leftOutDome: (tin) =>
    `${tin}: cut like an orange, from the middle, into as many pieces as there are guests.`,
  tin: 'Tin',
  howToRead: 'How to read this',
  toTins: 'All tins',
  fromTins: 'How many they serve, and how to cut them',
  scale: (scale) => `Cakes drawn 1 : ${scale}; the bar is 10 cm.`,
};
