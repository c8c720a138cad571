/** A table in four steps: normalise what is given, size columns, style rows, render strips. */
import type { Paragraph } from '../lines.ts';
import type { Surface } from '../surface.ts';
import type { Alignment } from '../text-block.ts';
import type { TypeStyle } from '../type-scale.ts';

/** A small picture at the left of a cell, drawn with its box's top left corner at (x, y). */
export interface Drawing {
  widthMm: number;
  heightMm: number;
  alt: string;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

export interface Cell {
  drawing?: Drawing;
  /** Aligned with the others of its column on the decimal point, or on the last digit before a fraction. */
  number?: { text: string; type: TypeStyle };
  paragraphs?: Paragraph[];
  /** Speaks for its row. */
  heading?: boolean;
  /** Where a click leads, and how that is read aloud. */
  link?: { url: string; description: string };
}

export interface Column {
  heading: Paragraph[];
  /** A figure as the heading, aligned like those below it. */
  headingNumber?: { text: string; type: TypeStyle };
  align: Alignment;
  /** Text columns grow to this at most; figures take what they need. */
  widestMm?: number;
  narrowestMm?: number;
  /** All drawings of the column stand in a field this wide. */
  drawingMm?: number;
}

export interface Row {
  cells: Cell[];
  /** Links jump to this name. */
  anchor?: string;
}

export interface TableSpec {
  /** Its own within the section. */
  key: string;
  columns: Column[];
  rows: Row[];
  zebra?: boolean;
  /** Kept on one page if a page can hold it. */
  whole?: boolean;
  /** Space above and below the text of a row. */
  paddingMm?: number;
  /** Space above the header; 4 mm when left out. */
  spaceMm?: number;
}

/** A column with its place and width. */
export interface SizedColumn extends Column {
  xMm: number;
  widthMm: number;
  /** Widest part right of the alignment point among the column's numbers. */
  tailMm: number;
}
