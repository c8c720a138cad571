/** One plan: these tins together, in one recipe, with what goes round them. What the planner and an order show. */
import type { Warning } from '../domain/problem.ts';
import type { BakeFigures, ChartBake } from './bake-figures.types.ts';
import type { Caution, Figure, Named } from './figure.ts';
import type { Amount, ChartColumn, EggFigures } from './tin-chart.types.ts';
import type { TinPicture } from './tin-picture.ts';

export interface PlanTin {
  /** The tin's id; a tin described on the spot has its description. */
  id: string;
  name: string;
  sizeText: string;
  count: number;
  picture: TinPicture;
  /** Batter into each, g. */
  receives: Figure;
  rawFill: Figure;
  rawFillShare: Figure;
  finishedHeight: Figure;
  /** Null where bake times are not worked out. */
  bake: BakeFigures | null;
  /** Portions of one such cake; null without a plan to cut. */
  portions: Figure | null;
  warnings: Warning[];
}

/** One bowlful. */
export interface PlanLoad {
  name: string;
  batter: Figure;
  eggs: EggFigures | null;
  /** One per column, same order. */
  amounts: Amount[];
  /** What it fills: '2 × Six-inch round and half of Twelve-inch round'. */
  fillsText: string;
}

/** One finish in one use, for all cakes of the plan together. */
export interface PlanFinish {
  id: string;
  finish: Named;
  useText: string;
  needed: Figure;
  make: Figure;
  /** Whole packets; null for what is made. */
  buy: Figure | null;
  parts: { name: string; amount: Amount }[];
  /** For each cake, where it differs by cake: 'Six-inch round: 310 g'. */
  perCake: { name: string; text: string }[];
}

export interface PlanView {
  /** Chart id of recipe and flavours: its chart and its working live under it. */
  chartId: string;
  recipe: Named;
  flavours: Named[];
  title: string;
  batter: Figure;
  /** Null for a recipe without eggs. */
  eggs: EggFigures | null;
  eggSizeText: string;
  columns: ChartColumn[];
  amounts: Amount[];
  loads: PlanLoad[];
  tins: PlanTin[];
  surplusText: string;
  finishes: PlanFinish[];
  /** Left out of finishing, by reason. */
  unfinished: string[];
  /** Of all cakes together. */
  portions: Figure | null;
  bake: ChartBake | null;
  warnings: Warning[];
  cautions: Caution[];
}
