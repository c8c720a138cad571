/** British English for what stands around the pages. */
import type { AroundWords } from './around-words.ts';

export const enGbAround: AroundWords = {
  find: {
    title: 'Find',
    description: 'Find a recipe, a tin, a flavour or a word on these pages.',
    lead: 'A recipe, a tin, a flavour, a word.',
    label: 'What are you looking for?',
    none: (asked) => `Nothing here is called ‘${asked}’.`,
    count: (count) => (count === 1 ? 'One found' : `${count} found`),
    all: 'Everything there is',
    noScript: 'Finding needs JavaScript; below is everything there is.',
  },
  offline: {
    title: 'Not on this device',
    text: 'There is no signal, and this was never opened on this device. The planner can still make a chart to print.',
    fresh: 'A new edition of these pages is ready.',
    take: 'Use it now',
  },
  cake: 'Cake',
  feed: { title: (kitchen) => `${kitchen}: recipes and charts` },
  kinds: {
    recipe: 'Recipe',
    chart: 'Tin chart',
    tin: 'Tin',
    flavour: 'Flavour',
    finish: 'Filling or coating',
    page: 'Page',
    term: 'Word',
  },
};
