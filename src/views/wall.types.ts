/** A wall reference: one thing to know from across the kitchen, as a table of few columns or a plate of tins. */
import type { Caution, Figure } from './figure.ts';
import type { TinPicture } from './tin-picture.ts';

export interface WallColumn {
  id: string;
  /** Heading in a word or two. */
  name: string;
  /** Unit beneath the heading; '' where the words say it. */
  unit: string;
  /** Key figures are read from two metres, words from 1.2 m. */
  weight: 'key' | 'word';
}

export interface WallCell {
  /** Null where the cell says words, or nothing. */
  figure: Figure | null;
  /** As shown. */
  text: string;
  /** 'contains' is told in heavier type, 'unknown' by the caution's colour too; 'nothing' is a quiet dash. */
  tone: 'plain' | 'contains' | 'unknown' | 'nothing';
}

export interface WallTable {
  form: 'table';
  columns: WallColumn[];
  rows: { id: string; cells: WallCell[] }[];
  /** The row where a second sheet would best begin, where the rows are of two kinds. */
  secondGroupAt: string | null;
}

export interface WallTin {
  id: string;
  name: string;
  sizeText: string;
  picture: TinPicture;
  /** To the rim, mL. */
  volume: Figure;
  /** Of the main recipe, g. */
  batter: Figure;
}

/** Tins drawn to one scale. */
export interface WallPlate {
  form: 'plate';
  volumeUnit: string;
  batterUnit: string;
  tins: WallTin[];
}

export interface WallView {
  /** Its file's name: 'egg-ladder-vanilla'. */
  id: string;
  title: string;
  lead: string;
  kitchenName: string;
  edition: string;
  body: WallTable | WallPlate;
  notes: string[];
  cautions: Caution[];
  /** From the site's root: where the figures are derived. */
  path: string;
  /** 'How these figures were worked out': said beside the code that leads there. */
  pathText: string;
}
