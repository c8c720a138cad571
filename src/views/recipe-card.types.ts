/** A recipe card: the weights for a few tins in front, how to make and bake it behind. */
import type { Caution, Figure, Named } from './figure.ts';
import type { MethodPiece } from './method-text.types.ts';
import type { Amount, ChartColumn, EggFigures } from './tin-chart.types.ts';

/** One tin's figures, the very ones of the tin chart. */
export interface CardTin {
  /** The chart row's id. */
  id: string;
  name: string;
  sizeText: string;
  eggs: EggFigures | null;
  batter: Figure;
  amounts: Amount[];
  rawFill: Figure;
  finishedHeight: Figure;
  surplus: Figure;
  /** What to set for this tin, and the times; null where they are not worked out. */
  dial: Figure | null;
  firstLook: Figure | null;
  expectedBy: Figure | null;
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
  columns: ChartColumn[];
  /** Best fits first: a card takes as many as it has room for and puts them in order of size. */
  tins: CardTin[];
  /** Place of each tin in the order of size. */
  sizeRank: number[];
  method: MethodPiece[];
  readyText: string;
  /** Most pressing first; allergens among them. */
  cautions: Caution[];
}
