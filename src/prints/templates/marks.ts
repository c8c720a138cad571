/** Small marks as strokes: crosses that must meet, the middle of a piece, dashes, circles. */
import type { PathStep } from '../sheet/surface.ts';
import type { Spot } from './curves.ts';

const line = (x1: number, y1: number, x2: number, y2: number): PathStep[] => [
  { op: 'move', x: x1, y: y1 },
  { op: 'line', x: x2, y: y2 },
];

const CIRCLE = 0.5523;

function circle({ x, y }: Spot, r: number): PathStep[] {
  const k = r * CIRCLE;
  return [
    { op: 'move', x: x + r, y },
    { op: 'cubic', x1: x + r, y1: y + k, x2: x + k, y2: y + r, x, y: y + r },
    { op: 'cubic', x1: x - k, y1: y + r, x2: x - r, y2: y + k, x: x - r, y },
    { op: 'cubic', x1: x - r, y1: y - k, x2: x - k, y2: y - r, x, y: y - r },
    { op: 'cubic', x1: x + k, y1: y - r, x2: x + r, y2: y - k, x: x + r, y },
  ];
}

const CROSS_MM = 3;
const CROSS_CIRCLE_MM = 1.8;

/** Cross and circle; the same on both sheets. */
export const registrationCross = (at: Spot): PathStep[] => [
  ...line(at.x - CROSS_MM, at.y, at.x + CROSS_MM, at.y),
  ...line(at.x, at.y - CROSS_MM, at.x, at.y + CROSS_MM),
  ...circle(at, CROSS_CIRCLE_MM),
];

const CENTRE_MM = 7;

/** A larger cross without a circle. */
export const centreCross = (at: Spot): PathStep[] => [
  ...line(at.x - CENTRE_MM, at.y, at.x + CENTRE_MM, at.y),
  ...line(at.x, at.y - CENTRE_MM, at.x, at.y + CENTRE_MM),
];

export const straightLine = (a: Spot, b: Spot): PathStep[] => line(a.x, a.y, b.x, b.y);
