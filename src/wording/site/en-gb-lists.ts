/** British English for the pages that lead to others. */
import type { ListPageWords } from './site-words.ts';

export const enGbLists: ListPageWords = {
  home: {
    title: 'Tin charts and recipes',
    description: (kitchen, place) => `Batter, whole eggs and weights for every tin of ${kitchen}, ${place}.`,
    lead: (recipes, tins) =>
      `${recipes} cakes in ${tins} sizes of tin. For each: how many eggs, how much batter, what to weigh.`,
    toChart: 'Open a tin chart',
    nest: 'The plans of all the tins, drawn to one scale on one centre',
    nestCaption: 'Every tin on the shelf, drawn on one centre to one scale.',
    toTins: 'See them one by one',
    recipes: 'Recipes and their charts',
    chart: 'Tin chart',
    chartOf: (recipe) => `Tin chart: ${recipe}`,
    recipe: 'Recipe',
    recipeOf: (recipe) => `Recipe: ${recipe}`,
    first: 'Before the first bake',
    toPrint: 'Charts to print and pin up',
  },
  recipes: {
    title: 'Recipes',
    description: 'Every recipe with its formula, method and proven bakes.',
    lead: 'Each one is written for the amount it was first proved in. Its chart turns that into every tin on the shelf.',
  },
  charts: {
    title: 'Tin charts',
    description: 'Batter, whole eggs and weights for every tin, cake by cake.',
    lead: 'Batter, whole eggs and weights for every tin in the kitchen. Choose the cake.',
  },
  flavours: {
    title: 'Flavours',
    description: 'What each flavour changes, in which recipes, and why they still balance.',
  },
  downloads: {
    lead: 'Everything on this site that can be printed or opened in a spreadsheet. Print at actual size, not “fit to page”: the drawings are to scale.',
    what: 'For',
    files: 'Files, with their size',
    empty: 'No files have been made yet. Run the whole build, then look here again.',
  },
  missing: {
    title: 'No page here',
    lead: 'The address may have been mistyped, or the recipe or tin renamed.',
    home: 'Go to the first page',
    before: 'If that does not work, type',
    after: 'into the address bar.',
  },
};
