/** The baker's logo as shapes to be drawn: what prints make of an SVG file. */
export type PenStep =
  | { op: 'move'; x: number; y: number }
  | { op: 'line'; x: number; y: number }
  | { op: 'cubic'; x1: number; y1: number; x2: number; y2: number; x: number; y: number }
  | { op: 'close' };

export interface LogoShape {
  /** Units of the drawing, y down. */
  steps: PenStep[];
  /** '#rrggbb', or the house's ink; null for none. */
  fill: string | 'ink' | null;
  evenOdd: boolean;
  stroke: string | 'ink' | null;
  strokeWidth: number;
}

export interface LogoDrawing {
  /** In units of the drawing, which is LOGO_HEIGHT high. */
  width: number;
  shapes: LogoShape[];
}

export const LOGO_HEIGHT = 100;
