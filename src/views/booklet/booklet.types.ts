/** The booklet: a kitchen's recipes, flavours, finishes and tables in one small book. Plain data, ready to set. */
import type { Caution, Figure, Named } from '../figure.ts';
import type { MethodPiece } from '../method-text.types.ts';
import type { Amount, ChartColumn } from '../tin-chart.types.ts';
import type { TinPicture } from '../tin-picture.ts';

export interface BookletFact {
  label: string;
  text: string;
}

export interface TableColumn {
  id: string;
  name: string;
  /** Below the name; '' where the words say it. */
  unit: string;
  /** Figures line up on their digits, words begin together. */
  weight: 'key' | 'word';
}

export interface TableCell {
  /** Null where the cell says words, or nothing. */
  figure: Figure | null;
  /** As shown. */
  text: string;
  /** Below it, in quiet type; '' for nothing. */
  small: string;
  /** 'strong' in heavier type, 'unknown' by the caution's colour too. */
  tone: 'plain' | 'strong' | 'unknown';
}

/** A table of the booklet: its first column names the row. */
export interface BookletTable {
  id: string;
  title: string;
  lead: string;
  columns: TableColumn[];
  rows: { id: string; cells: TableCell[] }[];
  /** A name in the document for a row, where the index or a link leads to it. */
  anchors: Record<string, string>;
  notes: string[];
  cautions: Caution[];
}

/** What goes into one tin, or several of a kind; the very figures of the tin chart. */
export interface BookletRow {
  /** The chart row's id. */
  id: string;
  tinId: string;
  /** '2 × Six-inch round'. */
  name: string;
  /** Whole eggs, yolks or whites, one for each of the recipe's egg headings; empty where they are weighed. */
  eggs: Figure[];
  /** '165 g beaten egg'; '' where they are counted. */
  eggText: string;
  batter: Figure;
  /** One per column of the recipe. */
  amounts: Amount[];
  fill: Figure;
  surplus: Figure;
  /** Letters of the remarks that concern this row. */
  remarks: string[];
  anchor: string;
}

export interface BookletBake {
  tinId: string;
  name: string;
  dial: Figure;
  firstLook: Figure;
  expectedBy: Figure;
  /** 'heating core', 'band', ''. */
  aid: string;
  anchor: string;
}

export interface BookletIngredient extends Named {
  amountText: string;
  alsoText: string;
  anchor: string;
}

export interface BookletRecipe extends Named {
  summary: string;
  /** From the site's root: how the figures were worked out. */
  path: string;
  anchor: string;
  facts: BookletFact[];
  formula: BookletIngredient[];
  totalText: string;
  eggNote: string;
  /** Allergens, and what nobody has checked: beside the ingredients. */
  allergens: Caution[];
  method: MethodPiece[];
  /** Which proven bakes stand behind the figures. */
  basisText: string;
  /** 'Eggs', or 'Yolks' and 'Whites' where those are counted; empty for a recipe without eggs. */
  eggHeadings: string[];
  columns: ChartColumn[];
  rows: BookletRow[];
  remarks: { letter: string; text: string }[];
  /** Warnings about the recipe as a whole. */
  warnings: string[];
  bakes: BookletBake[];
  bakeBasisText: string;
  readyText: string;
  /** Everything but the allergens. */
  cautions: Caution[];
}

export interface BookletFlavourLine extends Named {
  before: Figure | null;
  after: Figure | null;
  change: Figure;
  anchor: string;
}

export interface BookletFlavourChange {
  recipe: Named;
  lines: BookletFlavourLine[];
  /** 'As before: butter and egg.'; '' when everything changes. */
  unchangedText: string;
  eggsText: string | null;
  wetText: string | null;
  /** '' while a tin takes as much batter as of the plain recipe. */
  growthText: string;
  /** '' while the allergens stay the same. */
  allergenText: string;
  cautions: Caution[];
  warnings: string[];
}

export interface BookletFlavour extends Named {
  summary: string;
  anchor: string;
  why: string;
  steps: string[];
  method: string | null;
  alsoText: string;
  changes: BookletFlavourChange[];
}

export interface BookletFinish extends Named {
  /** The first table that tells its amounts; null where none does. */
  tableId: string | null;
  anchor: string;
  partsText: string;
  keepsText: string;
  method: MethodPiece[];
  cautions: Caution[];
}

export interface BookletFinishing {
  summary: string;
  settings: BookletFact[];
  tables: BookletTable[];
  finishes: BookletFinish[];
  notes: string[];
  leftOut: string[];
  cautions: Caution[];
  warnings: string[];
}

export interface BookletTin extends Named {
  anchor: string;
  sizeText: string;
  otherSizeText: string;
  note: string;
  picture: TinPicture;
  volume: Figure;
  owned: Figure;
}

/** A term of the index and the names of the places it leads to, in the order of the pages. */
export interface IndexEntry {
  id: string;
  name: string;
  anchors: string[];
}

export interface BookletView {
  kitchenName: string;
  place: string;
  baker: string | null;
  edition: string;
  editionNote: string;
  licence: string | null;
  preparedFor: string | null;
  siteUrl: string | null;
  /** Unit of the recipes' tables. */
  mass: 'g' | 'oz';
  /** One leaf, mm: what each sheet pushes the next one out by in the fold. */
  paperThicknessMm: number;
  use: { points: { head: string; text: string }[]; cautions: Caution[] };
  overview: BookletTable;
  recipes: BookletRecipe[];
  flavours: BookletFlavour[];
  finishing: BookletFinishing | null;
  tins: BookletTin[];
  /** Oven dials, egg sizes, portions, allergens. */
  reference: BookletTable[];
  index: { tins: IndexEntry[]; ingredients: IndexEntry[] };
}
