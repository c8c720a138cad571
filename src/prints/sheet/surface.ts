/**
 * What a print draws on. Lengths in mm from the sheet's top left corner (y down), type sizes in points, colours
 * as '#rrggbb'. A print never sees the PDF library: the same drawing runs at any origin, several up, imposed or
 * in the browser.
 */
import type { FontRole } from '../../domain/house-style.ts';

export type StructureTag =
  | 'Document'
  | 'Part'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Caption'
  | 'Link'
  | 'TOC'
  | 'TOCI'
  | 'Reference'
  | 'Span';

export interface TagOptions {
  /** The same key under the same parent continues that element, also on a later page. */
  key?: string;
  alt?: string;
  /** Which cells a TH speaks for. */
  scope?: 'Row' | 'Column';
  colSpan?: number;
  rowSpan?: number;
  /** Bounding box for a figure, mm on the sheet. */
  box?: Box;
}

export interface Box {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

export interface Origin {
  xMm: number;
  yMm: number;
}

export interface TextRun {
  text: string;
  xMm: number;
  /** Of the baseline. */
  yMm: number;
  font: FontRole;
  sizePt: number;
  colour: string;
  /** Equal-width digits, for columns. */
  tabular?: boolean;
  /** Degrees, counter-clockwise, about (x, y). */
  turnDeg?: number;
}

export type PathStep =
  | { op: 'move'; x: number; y: number }
  | { op: 'line'; x: number; y: number }
  | { op: 'cubic'; x1: number; y1: number; x2: number; y2: number; x: number; y: number }
  | { op: 'close' };

export interface Paint {
  fill?: string;
  stroke?: string;
  lineWidthPt?: number;
  dashMm?: number[];
  evenOdd?: boolean;
}

export type LinkTarget = { url: string } | { anchor: string };

export interface Surface {
  text(run: TextRun): void;
  path(steps: PathStep[], paint: Paint): void;
  /** Everything drawn inside belongs to one structure element. */
  within(tag: StructureTag, options: TagOptions, body: () => void): void;
  /** Page furniture, rules and repeated headers: what reading aloud skips. */
  artifact(body: () => void): void;
  /** Of everything drawn inside, only what lies in the box shows. */
  clip(box: Box, body: () => void): void;
  /** A place that can be clicked; `body` draws what shows there. The description is read aloud. */
  link(box: Box, target: LinkTarget, description: string, body: () => void): void;
  /** A name that links and addresses (file.pdf#name) can jump to. */
  anchor(name: string, at: Origin): void;
  /** Level 1 is outermost; the place is the height of the page to show. */
  bookmark(title: string, level: number, at: Origin): void;
}

/** Text measures, from the very font that is embedded. */
export interface Metrics {
  widthMm(text: string, font: FontRole, sizePt: number, tabular?: boolean): number;
  ascentMm(font: FontRole, sizePt: number): number;
  descentMm(font: FontRole, sizePt: number): number;
  capHeightMm(font: FontRole, sizePt: number): number;
  /** Height of a lower-case x, which label rules measure. */
  xHeightMm(font: FontRole, sizePt: number): number;
  hasGlyph(codePoint: number, font: FontRole): boolean;
}

export interface PrintPage {
  widthMm: number;
  heightMm: number;
  /** How far ink runs over the trimmed edge, for a printer who cuts the page out; left out: not at all. */
  bleedMm?: number;
  draw(surface: Surface, origin: Origin): void;
}

export interface Print {
  /** Path below output/print, without '.pdf'. */
  path: string;
  title: string;
  lang: string;
  subject: string;
  pages: PrintPage[];
}
