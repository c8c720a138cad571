/**
 * A drawing of figures against one another, laid out in mm from its top left corner, ready for a page or a sheet:
 * both draw the very same strokes. Nothing is told by colour alone: lines differ in dashes, marks in shape.
 */
export type PlotStep =
  | { op: 'move'; x: number; y: number }
  | { op: 'line'; x: number; y: number }
  | { op: 'cubic'; x1: number; y1: number; x2: number; y2: number; x: number; y: number }
  | { op: 'close' };

export type Stroke = 'solid' | 'dashed' | 'dotted';

export interface PlotTick {
  atMm: number;
  text: string;
}

export interface PlotAxis {
  label: string;
  ticks: PlotTick[];
}

/** What the reader sees named beside the drawing, each with a sample of its own strokes. */
export interface PlotKey {
  text: string;
  band: PlotStep[] | null;
  line: { steps: PlotStep[]; stroke: Stroke } | null;
  mark: { steps: PlotStep[]; filled: boolean } | null;
  /** Where its text starts: left edge and baseline. */
  xMm: number;
  yMm: number;
}

export interface Plot {
  id: string;
  title: string;
  /** Read aloud instead of the drawing. */
  description: string;
  widthMm: number;
  heightMm: number;
  /** Within the axes. */
  frame: { xMm: number; yMm: number; widthMm: number; heightMm: number };
  x: PlotAxis;
  y: PlotAxis;
  bands: { steps: PlotStep[]; tone: 'first' | 'second' }[];
  lines: { steps: PlotStep[]; stroke: Stroke }[];
  marks: { steps: PlotStep[]; filled: boolean }[];
  /** Level lines with a word, such as 'Done at 95 °C'. */
  levels: { yMm: number; text: string }[];
  keys: PlotKey[];
  /** The same figures to read. */
  table: { head: string[]; rows: string[][] };
}
