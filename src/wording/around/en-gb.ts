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
    text: 'There is no signal, and this file was not kept on this device. Pages, figures and tin charts on the kitchen’s own paper are kept by themselves; other prints once they have been opened, or a whole group at a time on the page of prints. The planner can make charts, templates and the sheet of a plan without a signal.',
    fresh: 'A new edition of these pages is ready.',
    take: 'Use it now',
    keep: (size) => `Keep these prints on this device (${size})`,
    keeping: 'Kept so far: … of …',
    kept: 'Kept on this device: these prints open without a signal.',
    letGo: 'Let them go',
    notKept:
      'Not all of them could be kept. What came is there; try again with a better signal or more room.',
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
