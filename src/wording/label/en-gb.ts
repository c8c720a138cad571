/**
 * British English for labels. 'May have an adverse effect …': Regulation (EC) No 1333/2008 Annex V (from memory).
 */

import { britishDate } from '../date.ts';
import { capitalised, uncapitalised } from '../sentence-case.ts';
import type { LabelWords } from './label-words.ts';

export const enGbLabel: LabelWords = {
  date: britishDate,
  foodWith: (food, finishes) => `${food} with ${finishes}`,
  smallFood: (kind, food) => `${kind}: ${uncapitalised(food)}`,
  dummies: (count) => (count === 1 ? 'the dummy tier' : 'the dummy tiers'),
  flavoured: (food, flavours) =>
    flavours.length === 0 ? food : `${food} (${flavours.map((name) => name.toLowerCase()).join(', ')})`,
  ingredients: 'Ingredients:',
  contains: 'Contains:',
  mayContain: 'May contain:',
  seeCapitals: 'Allergens: see ingredients in ',
  boldCapitals: 'bold capitals',
  noneKnown: 'none of the fourteen allergens among its ingredients',
  allergens: {
    gluten: 'cereals containing gluten',
    crustaceans: 'crustaceans',
    eggs: 'eggs',
    fish: 'fish',
    peanuts: 'peanuts',
    soya: 'soya',
    milk: 'milk',
    nuts: 'nuts',
    celery: 'celery',
    mustard: 'mustard',
    sesame: 'sesame',
    sulphites: 'sulphites',
    lupin: 'lupin',
    molluscs: 'molluscs',
  },
  percentages: (list) => `${capitalised(list)}.`,
  percentage: (name, percent) => `${name} ${percent}`,
  over100: (name, grams) => `prepared with ${grams} g ${name} per 100 g`,
  portions: (count) => (count === 1 ? 'One portion.' : `${count} portions.`),
  net: (amount) => `Net weight: ${amount}`,
  best: 'Best before:',
  use: 'Use by:',
  dateToWrite: (days) =>
    days === 0
      ? 'the day it is made'
      : days === 1
        ? 'the day after it is made'
        : `${days} days after it is made`,
  kept: (freezeOn, eatBy) => `Kept back and frozen on ${freezeOn}: eat by ${eatBy}, within a day of thawing.`,
  storage: {
    chilled: 'Keep in a fridge, at 8 °C or below.',
    'chilled-and-tempered': 'Keep in a fridge, at 8 °C or below; take out an hour before serving.',
    'dry-same-day': 'Keep in a closed box in a cool, dry place, not in a fridge. Eat on the day.',
    'dry-under-sheet': 'Keep in a closed box in a cool, dry place out of the sun. Not in a fridge.',
    cool: 'Keep in a closed box in a cool room, below 20 °C, out of the sun.',
    box: 'Keep in a closed box in a cool, dry place.',
  },
  colours: (names) => `${names}: may have an adverse effect on activity and attention in children.`,
  alcohol: (names) => `Made with alcohol: ${names}.`,
  supports: 'supports and boards',
  inedible: (things) => `Remove before eating: ${things}.`,
  nutrition: {
    title: 'Nutrition',
    per100: 'per 100 g',
    perPortion: (grams) => `per portion (${grams} g)`,
    figures: {
      energy: 'Energy',
      fat: 'Fat',
      saturates: 'saturates',
      carbohydrate: 'Carbohydrate',
      sugars: 'sugars',
      polyols: 'polyols',
      fibre: 'Fibre',
      protein: 'Protein',
      salt: 'Salt',
    },
    ofWhich: (what) => `of which ${what}`,
    line: (title, figures) => `${title}: ${figures}.`,
    missing: (names) => `Nutrition is not worked out: nobody has filled in ${names}.`,
    noPortion: 'Nutrition stands per 100 g alone: how many portions are cut from this cake is not known.',
  },
  madeBy: 'Made by',
  order: (reference) => `Order ${reference}`,
  rules: (rules, date) => `Written by the ${rules} rules of ${date}.`,
  card: {
    title: 'Allergens',
    crossContact: 'Made in a kitchen that handles other allergens, so traces are possible.',
    ask: 'Tell us about an allergy before you order, and ask before you eat.',
  },
  draft:
    'A draft: check it against your local rules, and against the packets you used, before it goes on a cake.',
  exempt:
    'Small makers who sell straight to the eater need no nutrition table; one that is given must be right. These figures are worked out, not measured.',
  keeps: (days, decidedBy, from) => {
    const long = days === 0 ? 'To be eaten on the day' : days === 1 ? 'Keeps a day' : `Keeps ${days} days`;
    if (decidedBy === null) return `${long}${from === null ? '' : `, counted from ${from}`}.`;
    const since = from === null ? '' : `, made on ${from}`;
    return `${long}, as long as the part that is over first: ${decidedBy}${since}.`;
  },
  needs: {
    name: 'the name of the food',
    ingredients: 'the list of ingredients',
    allergens: 'its allergens',
    percentages: 'the percentages of what its name promises',
    'net-quantity': 'the net quantity',
    date: 'a date',
    storage: 'how to keep it',
    business: 'name and address of the business',
    nutrition: 'nutrition',
  },
  sale: {
    'made to order': 'made to order',
    'prepacked for direct sale': 'boxed before anyone chose it, by whoever made it',
    prepacked: 'prepacked',
    distance: 'at a distance',
  },
  saleNote: {
    'made to order': 'A cake made to order and boxed afterwards is not prepacked for direct sale.',
    'prepacked for direct sale': '',
    prepacked: '',
    distance: 'The allergens must be told twice: before the order is final, and when the cake arrives.',
  },
  needsLine: (sale, list) => `Sold ${sale}, these rules ask for ${list}; the rest is a courtesy.`,
  needsNothing: (sale) => `Sold ${sale}, these rules ask for no label; your state or town may.`,
  gaps: (list) => `Still missing: ${list}.`,
  ties: (list) => `These weigh the same, so either may come first: ${list}.`,
  gone: 'The oven takes all the added water, so it is not in the list.',
  refused: 'No label',
  tooSmall: {
    title: (food) => `${food}: no label at this size`,
    why: (width, height, xHeight) =>
      `Everything that the label must say does not fit on ${width} × ${height} mm with a lower-case x ${xHeight} mm high, and smaller type may not be used.`,
    need: (height, width) =>
      `It needs a label ${width} mm wide and ${height} mm high. Write it under label: sizes.`,
    wider: (width) =>
      `No height would do: one of its words is wider than that. Use a label ${width} mm wide or wider.`,
  },
  sheet: {
    title: (size) => `Labels, ${size} mm`,
    cards: (size) => `Allergen cards, ${size} mm`,
    subject: 'Labels to cut out',
    note: 'Print at 100 %, not scaled to fit: smaller type may not be used.',
    tooLarge: (size, paper) => `A label of ${size} mm does not fit on a sheet of ${paper} with its margins.`,
  },
  page: {
    nav: 'Labels',
    title: 'Allergens and labels',
    lead: 'What is in every cake we bake, and the label it would carry.',
    matrixTitle: 'Allergens at a glance',
    matrixNote:
      'Each cake as it is baked: a filling or a coating adds its own. A dash: not among the ingredients as written down. It is no promise: everything is made in one kitchen, where all of these are handled.',
    what: 'Cake',
    notThere: '–',
    unknown: 'Not checked',
    unknownCount: (count) => (count === 1 ? 'one ingredient' : `${count} ingredients`),
    finish: 'filling or coating',
    labelsTitle: 'Label texts',
    labelsAbout:
      'Each for one cake from the sample tin, as weighed in, with the kitchen’s usual filling and coating where it is cut into layers.',
    sheets: 'Sheets to print',
    labelText: 'The label',
    working: 'How the list came to its order',
    workingAbout:
      'Weights as they go into the mixing bowl, heaviest first; added water by what the oven leaves of it. Percentages against the finished cake, which has lost its steam.',
    ingredient: 'Ingredient',
    bowl: 'In the bowl, g',
    share: 'Of the bowl',
    quid: 'Of the cake',
    facts: { finished: 'Finished weight', keeps: 'Keeps', storage: 'Storage' },
    notes: 'Before you use it',
    toAll: 'All labels and allergens',
    toRecipe: 'The recipe',
    why: 'There is no label for this cake, because:',
    labelOf: (food) => `Label: ${food}`,
    description: (food) => `Ingredients, allergens and nutrition of ${food}.`,
  },
};
