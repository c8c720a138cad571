/** What goes between the layers and around the cake, and what it is made of. */
import type { Ingredient } from './ingredient.ts';

/** In the order in which a chart lists them. */
export const FINISH_KINDS = [
  'buttercream',
  'ganache',
  'poured glaze',
  'sugarpaste',
  'marzipan',
  'royal icing',
  'jam',
  'curd',
  'cream',
  'syrup',
] as const;
export type FinishKind = (typeof FINISH_KINDS)[number];

/** A part of the finish's own formula, by weight against the other parts. */
export interface FinishPart {
  ingredientId: string;
  name: string;
  parts: number;
  fine: boolean;
  eggPart?: Ingredient['eggPart'];
}

/** How a finish is put on; absent where it is never used so. Lengths mm. */
export interface FinishUse {
  /** Between layers. */
  filling?: { thicknessMm: number };
  /** Spread around and on top: thin first coat, then the final one. A glaze is poured: it has no first coat. */
  coating?: { crumbMm: number; finalMm: number; corners: 'rounded' | 'sharp' };
  /** Rolled and draped: thickness, and what is left all round for trimming. */
  rolled?: { thicknessMm: number; trimMm: number };
  /** Brushed on each cut face, g/cm². */
  brushed?: { gPerCm2: number };
}

export interface Finish {
  id: string;
  name: string;
  kind: FinishKind;
  densityGPerMl: number;
  parts: FinishPart[];
  use: FinishUse;
  /** Left in bowl, bag and on the scraper, as a share of what is made. */
  lossShare: number;
  /** Weight lost in boiling or setting, as a share of what goes in; 0 for most. */
  cookingLossShare: number;
  keepsDays: number;
  chilled: boolean;
  /** Smallest amount that packets come in, g: 'buy 1 kg'. */
  packG?: number;
  methodMarkdown: string;
}
