/**
 * An outline is the plan of a tin: closed rings in mm, centred on the origin, y up, filled by the even-odd
 * rule (a ring inside a ring is a hole). Curves stay curves until something is drawn or cut.
 */
export interface Point {
  x: number;
  y: number;
}

export interface Line {
  kind: 'line';
  to: Point;
}

/** Part of an ellipse (rx = ry for a circle). Angles in radians, counter-clockwise from the rotated x axis. */
export interface Arc {
  kind: 'arc';
  to: Point;
  centre: Point;
  rx: number;
  ry: number;
  rotation: number;
  startAngle: number;
  /** Signed: positive runs counter-clockwise; a full turn is ±2π. */
  sweep: number;
}

export interface Cubic {
  kind: 'cubic';
  c1: Point;
  c2: Point;
  to: Point;
}

export type Segment = Line | Arc | Cubic;

/** A closed ring: if the last segment does not end at `start`, a straight line closes it. */
export interface Ring {
  start: Point;
  segments: Segment[];
}

export interface Outline {
  rings: Ring[];
}
