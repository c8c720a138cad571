/** The finishing chart: every tin × every finish in every way it is used, with board, box, ribbon and paper. */
import type { FinishUseName } from '../compute/finishes/finishing.ts';
import type { FinishKind } from '../domain/finish.ts';
import type { Warning } from '../domain/problem.ts';
import type { Caution, Figure, Named } from './figure.ts';
import type { Amount } from './tin-chart.types.ts';
import type { TinPicture } from './tin-picture.ts';

/** A finish in one of its uses. */
export interface FinishingColumn {
  /** 'vanilla-buttercream--filling' */
  id: string;
  finish: Named;
  kind: FinishKind;
  use: FinishUseName;
  /** 'Filling, 8 mm' */
  useText: string;
  /** What the finish is made of, in order. */
  parts: Named[];
  /** Whether it comes in packets. */
  isBought: boolean;
}

export interface FinishingSheet {
  form: 'round' | 'rectangle';
  across: Figure;
  otherAcross: Figure;
  /** '48 cm across', '46 × 46 cm' */
  text: string;
}

export interface FinishingCell {
  /** On the cake, g. */
  needed: Figure;
  /** To make, with what stays in the bowl; for a rolled sheet what is rolled out. g. */
  make: Figure;
  /** Whole packets, g; null for what is made. */
  buy: Figure | null;
  /** Weights of the column's parts, to the scale's step; `spoons` says how many eggs they come from. */
  parts: Amount[];
  /** Size to roll out; null for what is spread or brushed. */
  sheet: FinishingSheet | null;
}

export interface FinishingRow {
  /** The tin's id: an anchor on the page. */
  id: string;
  tinName: string;
  sizeText: string;
  otherSizeText: string;
  owned: number;
  picture: TinPicture;
  cakeHeight: Figure;
  layers: Figure;
  /** One per column, same order; null where the finish is not used so on this cake (no joints, no dam). */
  cells: (FinishingCell | null)[];
  coatedAcross: Figure;
  coatedHeight: Figure;
  board: Figure;
  boxSide: Figure;
  boxHeight: Figure;
  ribbon: Figure;
  /** Paper strip that lines the tin's side; null where no straight strip does. */
  paperStrip: { length: Figure; height: Figure; text: string } | null;
}

/** A finish as it is made. */
export interface FinishSummary extends Named {
  kind: FinishKind;
  kindText: string;
  /** 'Parts by weight: butter 1 and icing sugar 2.' */
  partsText: string;
  keepsText: string;
  density: Figure;
  loss: Figure;
  methodMarkdown: string;
  cautions: Caution[];
}

export interface FinishingChartView {
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  summary: string;
  /** How the kitchen finishes cakes, by label. */
  settings: { label: string; text: string }[];
  columns: FinishingColumn[];
  rows: FinishingRow[];
  finishes: FinishSummary[];
  /** Tins that cannot be worked out, with the reason. */
  leftOut: { id: string; text: string }[];
  notes: string[];
  cautions: Caution[];
  /** Finishes of this chart that do not go together. */
  warnings: Warning[];
}
