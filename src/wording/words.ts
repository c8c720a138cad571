/** The words a locale must bring. A missing key does not compile. */

import type { EggPart, EggSize } from '../domain/egg.ts';
import type { Allergen } from '../domain/ingredient.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { ShapeKind } from '../domain/shape.ts';
import type { DateFormat } from './date.ts';

export interface Noun {
  one: string;
  many: string;
}

/** Cautions by the code that outputs carry. */
export interface CautionWords {
  'raw-batter': string;
  'hot-tins': string;
  allergens: (names: string) => string;
  'allergens-unknown': (names: string) => string;
  /** What the base contains and this leaves out: never worded as free from it. */
  'made-without': (names: string) => string;
  ready: string;
}

/** Additions to a size: the base of a tapered tin, the tube, the slant, how a shape is measured. */
export interface SizeWords {
  base: (size: string) => string;
  tube: (size: string) => string;
  /** Of the wall across a corner. */
  slant: (size: string) => string;
  flats: string;
  corners: string;
  across: string;
  point: string;
  petals: (count: number) => string;
  water: (millilitres: string) => string;
  /** Alternative text of a drawing. */
  alt: (shape: string, across: string, depth: string) => string;
  deep: (depth: string) => string;
}

/** Sentences of the tin chart. */
export interface ChartWords {
  title: (recipe: string, flavours: readonly string[]) => string;
  summaryWithEggs: (eggs: string, rest: string, batter: string, tin: string) => string;
  summaryWithoutEggs: (batter: string, tin: string) => string;
  countOfTin: (count: number, tin: string) => string;
  noFill: string;
  basisOne: (tins: string, height: string, batter: string) => string;
  basisMany: (count: number, spread: string) => string;
  /** After the others: how many bakes of the log joined in, and what they changed. */
  basisLogged: (count: number, change: string) => string;
  /** '1 % more', '1 % less'; null for no change that shows. */
  changed: (share: string | null, more: boolean) => string;
  notes: {
    rows: string;
    eggs: (tolerance: string) => string;
    eggsWeighed: (tolerance: string) => string;
    grams: (step: string, fineStep: string) => string;
    ounces: string;
    surplus: (caseG: string) => string;
    fill: string;
    heights: string;
    loads: string;
    ladder: string;
  };
}

export interface Words {
  date: DateFormat;
  locale: Locale;
  and: string;
  /** Nought to twenty. */
  numbers: readonly string[];
  eggParts: Record<EggPart, Noun>;
  /** What is weighed when the kitchen weighs beaten egg. */
  eggPartWeighed: Record<EggPart, string>;
  noEggs: string;
  eggSize: (size: EggSize) => string;
  eggSizeWith: (size: string, grams: string) => string;
  eggSizeOwn: (grams: string) => string;
  fairyCakes: (count: number) => string;
  over: (amount: string) => string;
  short: (amount: string) => string;
  nothingOver: string;
  /** What stands beside bare figures: weights, heights, volumes. */
  units: { mass: 'g' | 'oz'; height: 'mm' | 'in' };
  pinch: string;
  /** Whether cups stand beside weights. */
  cups: boolean;
  tin: Noun;
  shapes: Record<ShapeKind, string>;
  sizeNotes: SizeWords;
  caution: string;
  /** A computation's warning as this locale says it; `names` are the baker's own and stay. */
  warning: (message: string, names: readonly string[]) => string;
  cautions: CautionWords;
  allergens: Record<Allergen, string>;
  chart: ChartWords;
}
