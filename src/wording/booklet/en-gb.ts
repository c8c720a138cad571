/** British English for the booklet. */

import { britishDate } from '../date.ts';
import { numberInWords } from '../locales/english-numbers.ts';
import { capitalised } from '../sentence-case.ts';
import type { BookletWords } from './booklet-words.ts';

const MOST_IN_WORDS = 20;
const inWords = (count: number): string => numberInWords(count, MOST_IN_WORDS);
const counted = (count: number, one: string, many: string): string =>
  `${inWords(count)} ${count === 1 ? one : many}`;

export const enGbBooklet: BookletWords = {
  date: britishDate,
  coverLine: 'Cakes by the tin',
  coverPicture: 'The tins from above, all to one scale',
  subtitle: (tins, recipes) =>
    `${capitalised(counted(recipes, 'recipe', 'recipes'))}, worked out for ${counted(tins, 'tin', 'tins')}`,
  by: (baker) => `by ${baker}`,
  title: (kitchen) => `${kitchen}: cakes by the tin`,
  subject: (kitchen) =>
    `The recipes of ${kitchen} with weights and whole eggs for every tin, flavours, fillings and coatings, and the tables that go with them.`,
  contents: 'Contents',
  notes: 'Notes',
  caution: 'Caution',
  check: 'Check',
  imprint: {
    heading: 'About this booklet',
    edition: (date, note) => (note === '' ? `Edition of ${date}.` : `${note}, ${date}.`),
    figures:
      'Every figure was worked out from bakes that were weighed and measured in this kitchen, for these tins, this oven and this size of egg. In another kitchen take them as a good first guess, weigh your own eggs, and write down what came of it.',
    licence: 'Copying',
    preparedFor: 'Prepared for',
    site: (address) => `The charts, and how each figure was worked out, are also at ${address}.`,
    siteCode: 'The charts and how they were worked out',
    folding:
      'One file holds these pages in reading order, the other sets them two to a sheet: print that on both sides, turned on the short edge, at 100 %, stack the sheets as they come, fold, and staple in the fold.',
  },
  use: {
    heading: 'How to use it',
    lead: 'Find the recipe, find the tin in its table, and read across: that is what to weigh.',
    points: {
      row: {
        head: 'One row, one mix.',
        text: 'Eggs come whole; Batter is what the bowl should weigh when everything is in it. If the scale says something quite different, look for what was left out.',
      },
      pairs: {
        head: 'Two tins at once',
        text: 'have a row of their own, marked 2 ×. Do not add up two rows: rounding the eggs twice can put an egg too many in the bowl.',
      },
      eggs: {
        head: 'Eggs',
        text: (size, tolerance) =>
          `are counted as ${size}. The nearest whole number is used while it is within ${tolerance} of the exact one; beyond that the whole mix is stepped up to the next egg.`,
      },
      eggsWeighed: {
        head: 'Eggs',
        text: (size, tolerance) =>
          `are counted as ${size}. Where no whole number comes within ${tolerance} of the exact one, the row gives beaten egg to weigh.`,
      },
      weights: {
        head: 'Weights',
        text: (step, fineStep) =>
          `are in grams, to ${step} g on the scale, and to ${fineStep} g for raising agents, salt and spices; finer where little is needed. Spoons are level, 5 ml and its parts.`,
      },
      ounces: {
        head: 'Weights',
        text: 'in the recipes’ tables are in ounces, worked out in grams and then rounded; everything else is in grams. Spoons are level.',
      },
      fill: {
        head: 'Fill',
        text: 'is how deep the raw batter stands in the tin, in millimetres: check it with a ruler at the wall.',
      },
      over: {
        head: 'Over',
        text: 'stands in the tables that have room for it: what whole eggs leave in the bowl, or with a minus sign what the tins go without between them.',
      },
      letters: {
        head: 'A letter',
        text: 'after a tin’s name leads to a remark below the table. Read it before you fill that tin.',
      },
      oven: {
        head: 'Times',
        text: 'are a window. Look first at the first, expect the cake by the second, and trust the signs before the clock.',
      },
      code: {
        head: 'The square',
        text: 'beside a recipe’s name opens on a telephone the page where its figures are worked out.',
      },
    },
    allergens:
      'Allergens are named with every recipe as its ingredients are written down. Packets change: read them again each time you bake for someone else, and say what is in it.',
  },
  recipes: {
    heading: 'Recipes',
    lead: (count) =>
      count === 1
        ? 'The recipe, what it is baked at, and what it contains.'
        : `${capitalised(inWords(count))} recipes, what each is baked at, and what each contains.`,
    name: 'Recipe',
    height: 'Baked',
    heightUnit: 'mm high',
    oven: 'Oven',
    contains: 'Contains',
    noneWritten: 'none of the fourteen written down',
    unchecked: (count) => `${count} not checked`,
  },
  recipe: {
    working: 'How these figures were worked out',
    formula: 'As written',
    amount: 'Amount',
    total: (grams) => `Together ${grams}.`,
    facts: {
      oven: 'Oven',
      height: 'Finished height',
      layers: 'Layers',
      eggs: 'Eggs',
      suits: 'Good for',
    },
    weights: 'Tin by tin',
    tin: 'Tin',
    weightsIn: (unit) => `Weights in ${unit}`,
    batter: 'Batter',
    inSpoons: 'in spoons',
    fill: 'Fill',
    fillUnit: 'mm',
    over: 'Over',
    oven: 'In the oven',
    ready: 'Ready',
    core: 'With',
    withCore: 'heating core',
    withBand: 'band',
    lowered: (recipeHeight, list) =>
      `Too shallow for the recipe’s ${recipeHeight}, so worked out for a lower cake: ${list}.`,
    loweredTin: (tin, height) => `${tin} ${height}`,
    collar: 'More batter than bakes level with the rim: give the tin a collar, and a tray beneath.',
  },
  flavours: {
    heading: 'Flavours',
    lead: 'What each one changes in the recipe as written, and why the cake still stands up. The shares hold in any tin, and unless it says otherwise the whole is brought back to the weight of the plain batter. The weights for every tin are on the flavour’s own chart.',
    inRecipe: (recipe) => `In ${recipe}`,
    ingredient: 'g, as written',
    plain: 'plain',
    flavoured: 'with it',
    change: 'change',
    why: 'Why it balances',
    method: 'In the bowl',
    unchanged: (names) => `As before: ${names}.`,
  },
  finishing: {
    heading: 'Fillings and coatings',
    tin: 'Cake from',
    rollTo: 'roll to',
    uses: {
      between: {
        title: 'Between the layers',
        about: 'Grams to make for all joints together, inside the dam; what stays in the bowl is in.',
      },
      dams: {
        title: 'The dam, and syrup',
        about:
          'Grams to make for the bead piped round every joint, and for syrup brushed on one face of every layer.',
      },
      around: {
        title: 'Around and on top',
        about: 'Grams to make for all coats together; what stays in the bowl is in.',
      },
      over: {
        title: 'Rolled over',
        about: 'Grams to roll out, and the size to roll to.',
      },
      under: {
        title: 'Board, box and ribbon',
        about: 'For the cake once it is coated.',
      },
    },
    under: {
      coated: 'Across',
      high: 'High',
      board: 'Board',
      boxSide: 'Box',
      boxHeight: 'Box, high',
      ribbon: 'Ribbon',
    },
    notes: 'How these are reckoned',
  },
  tables: { heading: 'Tables' },
  tins: {
    heading: 'The tins',
    lead: (scale) => `Plan and side, drawn 1 : ${scale}, smallest first; measured inside at the rim.`,
    tin: 'Tin',
    holds: 'Holds, ml',
    owned: 'We have',
    note: 'To match one of these with a tin of your own, fill yours with water on the scale: 1 g is 1 ml. A tin that holds the same takes the same batter, if it is about as deep.',
  },
  oven: { heading: 'Oven dials' },
  eggs: {
    heading: 'Egg sizes',
    lead: (own) => `The tables count on ${own}. With another size, weigh, or change the number of eggs.`,
    size: 'Size',
    egg: 'Egg',
    yolk: 'Yolk',
    white: 'White',
    forTen: 'For\u00a0ten',
    ofOurs: 'of\u00a0ours',
    scheme: (scheme, grade) => `${scheme} ${grade}`,
    own: 'Ours',
    note: 'Grams without the shell. British and European sizes: the middle of the grade, less 12 % for the shell; American sizes: the usual table of food composition, from memory. Five of your own on the scale beat any table.',
    caution:
      'Raw egg can make people ill. Keep eggs cool, wash hands after cracking them, and use clean ones.',
  },
  portions: {
    heading: 'Portions',
    lead: (sizes) => `Pieces from one cake as wide as the inside of its tin. ${sizes}.`,
    tin: 'Cake from',
    rings: 'in\u00a0rings',
    rows: 'in\u00a0rows',
  },
  allergens: { heading: 'What is in it' },
  index: {
    heading: 'Index',
    tins: 'Tins',
    ingredients: 'Ingredients',
    lead: 'Numbers are pages.',
  },
  ruler: '100 mm when printed at 100 %',
  backLine: 'Weighed, measured and baked before it was written down.',
  foldTitle: (title, paper, readingFile) =>
    `${title}, to fold from ${paper}. To read, search or have read aloud, open ${readingFile}`,
  foldSubject: (sheets, gatherings) =>
    `${counted(sheets, 'sheet', 'sheets')}: print on both sides, turned on the short edge, at 100 %; fold and staple${
      gatherings === 1 ? '' : ` in ${counted(gatherings, 'part', 'parts')}`
    }.`,
};
