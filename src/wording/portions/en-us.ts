/** US English for portions and cutting guides. */
import { enGbPortions } from './en-gb.ts';
import type { PortionsWords } from './portions-words.ts';

const pan = (text: string): string => text.replaceAll('tins', 'pans').replaceAll('tin', 'pan');

export const enUsPortions: PortionsWords = {
  ...enGbPortions,
  summary: pan(enGbPortions.summary),
  stacksTitle: pan(enGbPortions.stacksTitle),
  stacksAbout: (recipe) =>
    `Dessert portions, fewest left over first. Batter and eggs are for ${recipe}, each tier from one pan baked to the recipe’s own height.`,
  noStack: pan(enGbPortions.noStack),
  tin: 'Pan',
  toTins: 'All pans',
  notes: { ...enGbPortions.notes, owned: pan(enGbPortions.notes.owned) },
};
