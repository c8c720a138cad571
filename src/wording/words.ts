/** The words a locale must bring. A missing key does not compile. */
import type { EggPart, EggSize } from '../domain/egg.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { Role } from '../domain/ingredient.ts';
import type { ShapeKind } from '../domain/shape.ts';

export interface Noun {
  one: string;
  many: string;
}

export type CautionCode =
  | 'raw-batter'
  | 'hot-tins'
  | 'allergens'
  | 'allergens-unknown'
  | 'ready'
  | 'overflow';

export interface Words {
  locale: Locale;
  and: string;
  /** Nought to twenty. */
  numbers: readonly string[];
  eggParts: Record<EggPart, Noun>;
  noEggs: string;
  beatenEgg: (grams: string) => string;
  eggSize: (size: EggSize) => string;
  eggSizeOwn: string;
  eggSizeWith: (size: string, grams: string) => string;
  fairyCakes: (count: number) => string;
  over: (amount: string) => string;
  short: (amount: string) => string;
  nothingOver: string;
  pinch: string;
  tin: Noun;
  shapes: Record<ShapeKind, string>;
  roles: Record<Role, string>;
  /** Additions to a size: the base of a tapered tin, the tube, how a shape is measured. */
  sizeNotes: {
    base: (size: string) => string;
    tube: (size: string) => string;
    flats: string;
    corners: string;
    lobes: string;
    point: string;
    petals: (count: number) => string;
    water: (millilitres: string) => string;
    deep: (depth: string) => string;
    acrossAndDeep: (shape: string, across: string, depth: string) => string;
  };
  caution: string;
  cautions: Record<CautionCode, string>;
  chart: ChartWords;
}

/** Sentences of the tin chart. */
export interface ChartWords {
  title: (recipe: string, flavours: readonly string[]) => string;
  summary: (phrase: string) => string;
  summaryWithEggs: (eggs: string, batter: string, tin: string) => string;
  summaryWithoutEggs: (batter: string, tin: string) => string;
  countOfTin: (count: number, tin: string) => string;
  together: (fills: readonly string[]) => string;
  noFill: string;
  finishedHeight: (height: string) => string;
  basisOne: (tins: string, height: string, batter: string) => string;
  basisMany: (count: number, tins: string, spread: string) => string;
  notes: {
    rows: string;
    eggs: (tolerance: string) => string;
    eggsWeighed: (tolerance: string) => string;
    grams: (step: string, fineStep: string) => string;
    surplus: (caseG: string) => string;
    fill: string;
    heights: string;
    loads: string;
    ladder: string;
  };
}
