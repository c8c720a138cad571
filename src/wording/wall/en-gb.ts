/** British English for wall references. */
import { britishDate } from '../date.ts';
import type { WallWords } from './wall-words.ts';

export const enGbWall: WallWords = {
  date: britishDate,
  eggLadder: {
    title: (recipe) => `${recipe}: eggs to batter`,
    lead: (eggSize) => `So many eggs make so much batter, and fill this best. ${eggSize}.`,
    eggs: 'Eggs',
    batter: 'Batter',
    fills: 'Fills best',
    note: 'Weights of everything else: on the tin chart’s egg ladder.',
  },
  oven: {
    title: 'Oven dials',
    lead: 'One row is one heat, whatever the dial says.',
    conventional: 'No fan',
    fan: 'Fan',
    fahrenheit: 'No fan',
    gas: 'Gas',
    celsiusUnit: '°C',
    fahrenheitUnit: '°F',
    gasUnit: 'mark',
    note: 'To the nearest ten on a Celsius dial. Fan is 20 °C lower. Common practice; no standard fixes it.',
    caution: 'Dials are often 10 °C out, and more. Trust a thermometer that stands in the oven.',
  },
  tins: {
    title: 'What the tins hold',
    lead: (recipe) => `Water to the rim, and one tin’s batter for ${recipe}.`,
    volumeUnit: 'ml',
    batterUnit: 'g',
    note: 'Batter before eggs are made whole: weigh from the tin chart.',
  },
  finish: {
    title: (finish) => `${finish}: for each tin`,
    lead: (height, layers) =>
      `Cake ${height} high, ${layers === 1 ? 'one layer' : `${layers} layers`}. Bowl losses are in.`,
    tin: 'Tin',
    filling: 'Filling',
    dam: 'Dam',
    coating: 'Coating',
    make: 'g',
    note: 'What to weigh for it: on the finishing chart.',
  },
  allergens: {
    title: 'Allergens in what we bake',
    lead: 'From the ingredients as written down. Ask before you promise.',
    what: 'Contains',
    otherwise: 'other',
    unknown: '?',
    unknownColumn: 'Unknown',
    notThere: '–',
    all: 'none of the fourteen written down',
    notes: {
      dash: 'A dash: not among the ingredients. It is no promise.',
      unknown: 'A number under ‘unknown’: so many ingredients nobody has checked.',
      flavours: 'A flavour or a topping adds its own. Read every packet again.',
    },
    caution:
      'Everything here is made in one kitchen, where all of these are handled. Traces can be in any cake.',
  },
  grams: 'g',
  caution: 'Caution',
  working: 'How the figures were worked out',
  wherePage: 'This sheet’s page',
  edition: (date) => `Edition ${date}`,
  sheet: (sheet, sheets) => `Sheet ${sheet} of ${sheets}`,
  scale: (scale) => `20 cm; tins drawn 1 : ${scale}`,
  titleOf: (title, sheet, sheets) => `${title}, ${sheet}\u00a0of\u00a0${sheets}`,
  types: (keyPt, wordPt, notePt) =>
    notePt === null
      ? `Figures in ${keyPt} pt to read from 2 m, words in ${wordPt} pt from 1.2 m: capitals at least 1/215 of the distance.`
      : `Figures in ${keyPt} pt to read from 2 m, words in ${wordPt} pt from 1.2 m, notes in ${notePt} pt from 0.9 m: capitals at least 1/215 of the distance.`,
};
