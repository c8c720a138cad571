/** British English for the finishing chart. */
import { numberInWords } from '../locales/english-numbers.ts';
import type { FinishingWords } from './finishing-words.ts';

const MOST_IN_WORDS = 10;
const number = (count: number): string => numberInWords(count, MOST_IN_WORDS);

export const enGbFinishing: FinishingWords = {
  title: 'Fillings and coatings',
  summary: (height, layers) =>
    `For a cake ${height} high in ${number(layers)} ${layers === 1 ? 'layer' : 'layers'}: what goes between, around and under it, tin by tin.`,
  uses: {
    filling: (thickness) => `Filling, ${thickness}`,
    dam: (bead) => `Dam, ${bead} bead`,
    coating: (crumb, final) => (crumb === '' ? `Coat, ${final}` : `Coat, ${crumb} and ${final}`),
    poured: (thickness) => `Poured, ${thickness}`,
    rolled: (thickness) => `Rolled, ${thickness}`,
    brushed: (perFace) => `Brushed on, ${perFace}`,
  },
  kinds: {
    buttercream: 'buttercream',
    ganache: 'ganache',
    'poured glaze': 'poured glaze',
    sugarpaste: 'sugarpaste',
    marzipan: 'marzipan',
    'royal icing': 'royal icing',
    jam: 'jam',
    curd: 'curd',
    cream: 'cream',
    syrup: 'syrup',
  },
  sheetRound: (across) => `${across} across`,
  sheetOblong: (across, other) => `${across} × ${other}`,
  strip: (length, height) => `${length} × ${height}`,
  fromEggs: (count, part) => `from ${count} ${part}`,
  parts: (list) => `Parts by weight: ${list}.`,
  onePart: 'Bought ready made.',
  keeps: (days, chilled) =>
    `Keeps ${days === 1 ? 'one day' : `${days} days`}${chilled ? ' in the fridge' : ' in a cool place'}.`,
  settings: {
    height: 'Sponge height',
    layers: 'Layers',
    dam: 'Dam',
    undercoat: 'Coat below a rolled sheet',
    board: 'Board',
    box: 'Box',
    ribbon: 'Ribbon',
    noDam: 'none',
    heightOf: (height) => height,
    layersOf: (layers) => number(layers),
    boardOf: (margin, thickness) => `${margin} wider than the coated cake, ${thickness} thick`,
    boxOf: (clearance) => `as wide as the board, ${clearance} over the cake`,
    ribbonOf: (overlap) => `${overlap} of lap`,
  },
  notes: {
    cake: 'The cake is taken to be as wide as the inside of its tin; the few millimetres that a sponge shrinks are filled by its coat.',
    filling:
      'Filling is for all joints together, inside the dam. The dam is counted apart; without one, add its weight of filling.',
    coat: 'A coat goes round and over the top, down to the board; the base is bare. Crumb coat and final coat are counted together.',
    poured: (undercoat) =>
      `A glaze is poured in one go over a cold cake that already wears ${undercoat} of a firm coat, on a rack over a tray. What runs off is counted in what to make.`,
    made: 'Where two weights are given, the first is on the cake, and the one in bold is what to make: bowl, bag and scraper keep the rest.',
    rolled: (undercoat) =>
      `A rolled sheet goes over a cake that already wears ${undercoat} of buttercream or ganache. What is trimmed off can be wrapped and used again.`,
    board: 'Boards go up to the next whole inch. A box is as wide as its board.',
    dome: 'A half sphere is coated as the curve that it is.',
    parts: (step, fineStep) =>
      `Parts are to ${step} g and ${fineStep} g, finer for small amounts, so that they may differ from the total by a gram or two.`,
  },
  leftOut: (tin) =>
    `${tin}: known only by the water it holds, so nobody can say how much goes round it. Measure it, or weigh what you use.`,
  cautions: {
    chilled:
      'Fresh cream, curd and meringue with egg need the fridge, at 8 °C or below, and keep for days, not weeks. Fresh cream never goes under sugarpaste or marzipan.',
    supports:
      'Boards, ribbons, wires and supports that touch the cake must be made to touch food. Tell whoever cuts it what is inside.',
    hot: 'Boiling sugar, jam and cream burn worse than water: deep pan, long spoon, children away.',
    heavy:
      'Fillings and coats can weigh as much as the sponge. Lift a finished cake by its board, with both hands.',
  },
};
