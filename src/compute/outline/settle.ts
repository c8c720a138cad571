/**
 * An outline leaves a computation rounded to a millionth of a millimetre (and angles to 1e-9 rad): far below
 * what area or drawing can show, and enough that engines whose sine differs in the last digit agree.
 */
import type { Outline, Point, Segment } from '../../domain/outline.ts';

function settle(value: number, perUnit: number): number {
  const whole = Math.round(value * perUnit);
  return whole === 0 ? 0 : whole / perUnit;
}

const length = (value: number): number => settle(value, 1e6);
const angle = (value: number): number => settle(value, 1e9);
const point = ({ x, y }: Point): Point => ({ x: length(x), y: length(y) });

function settleSegment(segment: Segment): Segment {
  const to = point(segment.to);
  if (segment.kind === 'line') return { kind: 'line', to };
  if (segment.kind === 'cubic') return { kind: 'cubic', c1: point(segment.c1), c2: point(segment.c2), to };
  return {
    kind: 'arc',
    to,
    centre: point(segment.centre),
    rx: length(segment.rx),
    ry: length(segment.ry),
    rotation: angle(segment.rotation),
    startAngle: angle(segment.startAngle),
    sweep: angle(segment.sweep),
  };
}

/** The same outline with every number rounded for good. */
export function settleOutline(outline: Outline): Outline {
  return {
    rings: outline.rings.map(({ start, segments }) => ({
      start: point(start),
      segments: segments.map(settleSegment),
    })),
  };
}
