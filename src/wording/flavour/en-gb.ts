/** British English for a flavour's page. */
import type { FlavourWords } from './flavour-words.ts';

const inPlace = (entry: string, portion: string, same: boolean): string =>
  same ? `put as much ${entry} in its place` : `put ${entry} in its place, ${portion} of that weight`;

export const enGbFlavour: FlavourWords = {
  roles: {
    flour: 'flour',
    sugar: 'sugar',
    fat: 'fat',
    egg: 'egg',
    liquid: 'liquid',
    raising: 'raising agents',
    flavouring: 'flavouring',
    inclusion: 'fruit, nuts and seed',
  },
  batter: 'whole batter',
  methods: {
    creamed: 'creamed',
    'all-in-one': 'all-in-one',
    whisked: 'whisked',
    oil: 'oil',
    melted: 'melted',
    'rich fruit': 'rich fruit',
    angel: 'egg-white',
  },
  replace: (share, of, entry, portion, same) =>
    `Take ${share} of the ${of} out and ${inPlace(entry, portion, same)}.`,
  replaceAll: (of, entry, portion, same) => `Take all the ${of} out and ${inPlace(entry, portion, same)}.`,
  add: (share, of, entry) => `Add ${entry}, ${share} of the weight of the ${of}.`,
  addPerKg: (grams, entry) => `Add ${entry}, ${grams} g to each kilogram of batter.`,
  multiply: (by, of) => `Weigh ${by} of the ${of}.`,
  split: (selfRaising, flour, powder, share) =>
    `Count the ${selfRaising} as ${flour} with ${share} of its weight in ${powder}.`,
  kept: 'The whole is brought back to the weight of the plain batter, so a tin takes as much as before.',
  grows: (growth) => `What is added comes on top: a tin takes ${growth} more batter than of the plain one.`,
  alsoMethods: (list) => `It can be tried in other ${list} batters too: bake one small tin first.`,
  eggsChange: (before, after) =>
    `Eggs: ${after} for the formula as written, where the plain recipe has ${before}.`,
  eggsSame: (count) => `Eggs: ${count} for the formula as written, as in the plain recipe.`,
  noEggs: 'none',
  wetChange: (before, after) =>
    `Eggs and liquid together: ${after} of the flour and cocoa, ${before} in the plain recipe.`,
  added: (names) => `Brings in allergens that the plain recipe has not: ${names}.`,
  leftOut: (names) => `Made without ingredients that contain ${names}.`,
  noAllergenChange: 'The same allergens as the plain recipe, as far as they have been filled in.',
  title: (flavour, recipe) => `${recipe}, ${flavour}`,
  listTitle: 'Flavours',
  listAbout: 'What each flavour changes, in which recipes, and why they still balance.',
};
