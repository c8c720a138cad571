/** The tin chart of one recipe (and flavours): every tin owned × every ingredient, and the egg ladder. */
import type { EggPart } from '../domain/egg.ts';
import type { Warning } from '../domain/problem.ts';
import type { BakeFigures, ChartBake } from './bake-figures.types.ts';
import type { Caution, Figure, Named } from './figure.ts';
import type { TinPicture } from './tin-picture.ts';

export interface ChartColumn extends Named {
  /** Eggs are a column of their own, not one of these, unless the kitchen weighs beaten egg. */
  fine: boolean;
}

export interface Amount {
  figure: Figure;
  /** '¾ tsp' beside amounts under 5 g, else null. */
  spoons: string | null;
}

export interface EggFigures {
  rule: 'nearest' | 'step-up' | 'weigh';
  exact: Figure;
  whole: Figure;
  /** whole ÷ exact − 1. */
  deviation: Figure;
  /** Counts of eggs, yolks and whites apart, in the bowl's order; left out where they are weighed. */
  parts?: { part: EggPart; whole: Figure }[];
  /** Mass of the eggs that go in, shelled. */
  grams: Figure;
  /** 'Three eggs', 'Three eggs and two yolks', '165 g beaten egg'. */
  text: string;
}

export interface TinChartRow {
  /** Anchor on the chart and, with the chart's id, on its working page: 'round-6', 'round-6-x2'. */
  id: string;
  tinId: string;
  tinName: string;
  /** In the tin's own unit, 'round 6 × 3 in', then the other in brackets, '(15.2 × 7.6 cm)'. */
  sizeText: string;
  otherSizeText: string;
  count: number;
  owned: number;
  picture: TinPicture;
  /** To the rim, one tin, mL. */
  volume: Figure;
  /** What one tin asks for before egg rounding, g. */
  batterEach: Figure;
  /** What to pour into one tin: less than it asks for when the mix falls short. */
  receives: Figure;
  /** What the rounded mix for this row weighs, g: the number one bakes from. */
  batter: Figure;
  /** Null for a recipe without eggs. */
  eggs: EggFigures | null;
  /** One per column, same order. */
  amounts: Amount[];
  rawFill: Figure;
  /** Raw fill over depth, as a share. */
  rawFillShare: Figure;
  finishedHeight: Figure;
  surplus: Figure;
  /** '140 g over: 5 fairy cakes and 15 g', '8 g short', 'nothing over'. */
  surplusText: string;
  warnings: Warning[];
  /** Left out or null where bake times are not worked out. */
  bake?: BakeFigures | null;
  /** What one cake weighs when baked; likewise. */
  baked?: Figure | null;
}

export interface LadderRung {
  eggs: Figure;
  eggText: string;
  batter: Figure;
  amounts: Amount[];
  /** Up to three best fills from the tins owned, best first. */
  fills: { text: string; used: Figure; left: Figure }[];
}

export interface EggLadder {
  columns: ChartColumn[];
  rungs: LadderRung[];
}

export interface TinChartView {
  /** recipe id, or recipe id '--' flavour ids joined by '--'. */
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  recipe: Named;
  flavours: Named[];
  /** One sentence a colleague would say about this recipe's batter. */
  summary: string;
  finishedHeight: Figure;
  finishedHeightText: string;
  eggSizeText: string;
  /** Which proven bakes stand behind the figures, in words. */
  basisText: string;
  columns: ChartColumn[];
  rows: TinChartRow[];
  /** Null for a recipe without eggs. */
  ladder: EggLadder | null;
  /** Left out or null where bake times are not worked out. */
  bake?: ChartBake | null;
  /** How to read the chart, a sentence each. */
  notes: string[];
  cautions: Caution[];
  warnings: Warning[];
}
