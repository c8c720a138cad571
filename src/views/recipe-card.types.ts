/** A recipe card: the weights for a few tins in front, how to make and bake it behind. */
import type { Caution, Figure, Named } from './figure.ts';
import type { MethodPiece } from './method-text.types.ts';
import type { Amount, ChartColumn, EggFigures } from './tin-chart.types.ts';

/** What the oven asks for one tin. */
export interface CardBake {
  dial: Figure;
  firstLook: Figure;
  expectedBy: Figure;
  core: boolean;
  /** An insulated band goes round the tin. */
  band: boolean;
}

/** One tin's figures, the very ones of the tin chart. */
export interface CardTin {
  /** The chart row's id. */
  id: string;
  name: string;
  /** Without the shape where the name says it. */
  sizeText: string;
  eggs: EggFigures | null;
  batter: Figure;
  amounts: Amount[];
  rawFill: Figure;
  /** Null where the times are not worked out. */
  bake: CardBake | null;
  /** A sentence each. */
  warnings: string[];
}

export interface RecipeCardView {
  /** The tin chart's. */
  id: string;
  title: string;
  recipe: Named;
  kitchenName: string;
  edition: string;
  summary: string;
  ovenText: string;
  heightText: string;
  /** Null for a recipe without eggs. */
  eggSizeText: string | null;
  mass: 'g' | 'oz';
  columns: ChartColumn[];
  /** Best fits first: a card takes as many as it has room for and puts them in order of size. */
  tins: CardTin[];
  /** Place of each tin in the order of size. */
  sizeRank: number[];
  /** How many bakes the times rest on; null where none are worked out. */
  bakeBasisText: string | null;
  /** Whether the method gives times of its own, which may differ. */
  methodTimes: boolean;
  /** What each flavour does to the method. */
  flavours: { name: string; text: string }[];
  method: MethodPiece[];
  readyText: string;
  /** What to check in the formula itself, a sentence each. */
  warnings: string[];
  allergens: Caution[];
  /** Most pressing first; without what the method itself already says. */
  cautions: Caution[];
  /** The page that derives the figures, when the site has an address. */
  workingUrl: string | null;
}
