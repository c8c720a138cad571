/** British English. */
import { britishDate } from '../date.ts';
import type { Words } from '../words.ts';
import { enGBChart } from './en-GB-chart.ts';
import { ENGLISH_NUMBERS } from './english-numbers.ts';

export const enGB: Words = {
  date: britishDate,
  locale: 'en-GB',
  and: 'and',
  numbers: ENGLISH_NUMBERS,
  eggParts: {
    egg: { one: 'egg', many: 'eggs' },
    yolk: { one: 'yolk', many: 'yolks' },
    white: { one: 'white', many: 'whites' },
  },
  eggPartWeighed: { egg: 'beaten egg', yolk: 'yolk', white: 'white' },
  noEggs: 'no eggs',
  eggSize: ({ scheme, grade }) => `${scheme} ${grade}`,
  eggSizeWith: (size, grams) => `${size} eggs, ${grams} g each without the shell`,
  eggSizeOwn: (grams) => `Our own eggs, ${grams} g each without the shell`,
  fairyCakes: (count) => (count === 1 ? '1 fairy cake' : `${count} fairy cakes`),
  over: (amount) => `${amount} over`,
  short: (amount) => `${amount} short, shared by volume`,
  nothingOver: 'nothing over',
  units: { mass: 'g', height: 'mm' },
  pinch: 'a pinch',
  cups: false,
  tin: { one: 'tin', many: 'tins' },
  shapes: {
    round: 'round',
    square: 'square',
    rectangle: 'rectangle',
    loaf: 'loaf',
    hexagon: 'hexagon',
    octagon: 'octagon',
    'long-octagon': 'long octagon',
    oval: 'oval',
    heart: 'heart',
    petal: 'petal',
    ring: 'ring',
    dome: 'dome',
    outline: 'shaped',
    measured: 'measured',
  },
  sizeNotes: {
    base: (size) => `base ${size}`,
    tube: (size) => `tube ${size}`,
    slant: (size) => `slant ${size}`,
    flats: 'across flats',
    corners: 'across corners',
    across: 'across',
    point: 'from point to top',
    petals: (count) => `${count}-petal`,
    water: (millilitres) => `holds ${millilitres} mL`,
    alt: (shape, across, depth) => `${shape} tin, ${across} and ${depth} deep`,
    deep: (depth) => `${depth} deep`,
  },
  caution: 'Caution',
  warning: (message) => message,
  cautions: {
    'raw-batter':
      'Raw egg and raw flour can both make people ill: do not taste the batter, and wash hands, bowls and surfaces after it.',
    'hot-tins':
      'Tins, shelves and tubes stay hot long after the oven is off: use dry cloths, and turn cakes out away from children.',
    allergens: (names) =>
      `Made with ingredients that contain ${names}. Made in a kitchen that handles other allergens: tell whoever eats it.`,
    'allergens-unknown': (names) =>
      `Allergens not filled in for ${names}: read the packets before you bake for anyone.`,
    'made-without': (names) =>
      `Made without ingredients that contain ${names}, in a kitchen that uses them: traces travel by flour dust, sieves, cloths and hands. Not suitable for someone with that allergy unless everything is kept apart from start to finish.`,
    ready:
      'A cake is ready when it springs back, a skewer comes out clean and the edge draws away from the tin, whatever the clock says. If it is not, give it five minutes more and look again.',
  },
  allergens: {
    gluten: 'gluten',
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
  chart: enGBChart,
};
