/** Portions of every tin with the knife's lines, and the stacks that serve a number of guests. Plain data. */
import type { KnifeLine } from '../compute/portions/knife-lines.ts';
import type { PortionSize } from '../domain/portion.ts';
import type { Caution, Figure, Named } from './figure.ts';
import type { TinPicture } from './tin-picture.ts';

export interface PortionColumn {
  id: PortionSize['id'];
  name: string;
  /** 'Dessert, 1 × 2 in' */
  text: string;
}

export interface RowsGuide {
  /** Whole and nearly whole pieces. */
  count: Figure;
  whole: Figure;
  lines: KnifeLine[];
  alt: string;
}

export interface RingsGuide {
  count: Figure;
  /** '24 + 6 + 1', from the edge inwards. */
  detail: string;
  /** Radii that the knife goes round at, mm. */
  circlesMm: number[];
  circlesText: string;
  spokes: KnifeLine[];
  alt: string;
}

export interface TinCut {
  sizeId: PortionSize['id'];
  rows: RowsGuide;
  /** Null for anything but a round. */
  rings: RingsGuide | null;
}

export interface PortionRow {
  /** The tin's id. */
  id: string;
  tinName: string;
  sizeText: string;
  otherSizeText: string;
  picture: TinPicture;
  /** One per column, same order. */
  cuts: TinCut[];
}

export interface StackChoice {
  /** Bottom first. */
  tiers: Named[];
  text: string;
  portions: Figure;
  over: Figure;
  batter: Figure;
  eggsText: string;
  /** Of the stack with undercoats and boards. */
  height: Figure;
}

export interface StackAnswerView {
  wanted: Figure;
  choices: StackChoice[];
  hasMore: boolean;
}

export interface PortionsView {
  id: string;
  title: string;
  guidesTitle: string;
  kitchenName: string;
  edition: string;
  summary: string;
  columns: PortionColumn[];
  rows: PortionRow[];
  stacksTitle: string;
  stacksAbout: string;
  stacks: StackAnswerView[];
  leftOut: { id: string; text: string }[];
  notes: string[];
  cautions: Caution[];
}
