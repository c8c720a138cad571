/** American English: the same booklet, with pans for tins. Names that the baker gave are never touched. */
import { americanDate } from '../date.ts';
import type { BookletWords } from './booklet-words.ts';
import { enGbBooklet as gb } from './en-gb.ts';

const pans = (text: string): string =>
  text
    .replaceAll(/\btins\b/g, 'pans')
    .replaceAll(/\btin\b/g, 'pan')
    .replaceAll(/\bTins\b/g, 'Pans')
    .replaceAll(/\bTin\b/g, 'Pan');

const { points } = gb.use;
const { uses } = gb.finishing;

/** Every string of a group of words; what takes a value is left as it is. */
const allPans = <Group extends Record<string, string>>(group: Group): Group =>
  Object.fromEntries(Object.entries(group).map(([key, text]) => [key, pans(text)])) as Group;

export const enUsBooklet: BookletWords = {
  ...gb,
  date: americanDate,
  coverLine: pans(gb.coverLine),
  coverPicture: pans(gb.coverPicture),
  subtitle: (tins, recipes) => pans(gb.subtitle(tins, recipes)),
  title: (kitchen) => `${kitchen}: cakes by the pan`,
  subject: (kitchen) =>
    `The recipes of ${kitchen} with weights and whole eggs for every pan, flavors, fillings and coatings, and the tables that go with them.`,
  imprint: { ...gb.imprint, figures: pans(gb.imprint.figures) },
  use: {
    ...gb.use,
    lead: pans(gb.use.lead),
    points: {
      ...points,
      pairs: allPans(points.pairs),
      fill: allPans(points.fill),
      over: allPans(points.over),
      letters: allPans(points.letters),
    },
  },
  recipe: {
    ...gb.recipe,
    weights: 'Pan by pan',
    tin: 'Pan',
    collar: pans(gb.recipe.collar),
  },
  flavours: {
    ...gb.flavours,
    heading: 'Flavors',
    lead: pans(gb.flavours.lead).replaceAll('flavour', 'flavor'),
  },
  finishing: { ...gb.finishing, uses: { ...uses } },
  tins: {
    ...gb.tins,
    heading: 'The pans',
    tin: 'Pan',
    holds: 'Holds, mL',
    note: pans(gb.tins.note).replaceAll(/\bml\b/g, 'mL'),
  },
  portions: {
    ...gb.portions,
    lead: (sizes) => `Pieces from one cake as wide as the inside of its pan. ${sizes}.`,
  },
  index: { ...gb.index, tins: 'Pans' },
};
