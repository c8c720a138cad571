/**
 * Heart tin: a square of side s on its point with a half disc of diameter s on each upper side.
 * A = s² + πs²/4, P = 2s + πs. Across the lobes = s(1 + 1/√2); point to lobe top = s(3/(2√2) + ½).
 */
import type { Outline, Point, Segment } from '../../domain/outline.ts';
import type { Heart } from '../../domain/shape.ts';
import { circularArc } from '../outline/arc.ts';
import { centreOutline } from '../outline/transform.ts';
import { straightWalls } from './straight-walls.ts';

function sideMm({ acrossMm, measured }: Heart): number {
  return measured === 'across' ? acrossMm / (1 + Math.SQRT1_2) : acrossMm / (1.5 * Math.SQRT1_2 + 0.5);
}

function outline(heart: Heart): Outline {
  const side = sideMm(heart);
  const half = side * Math.SQRT1_2;
  const start: Point = { x: 0, y: 0 };
  const lobe = (x: number, from: number) =>
    circularArc({ x, y: 1.5 * half }, side / 2, (from * Math.PI) / 4, Math.PI);
  const segments: Segment[] = [
    { kind: 'line', to: { x: half, y: half } },
    { ...lobe(half / 2, -1), to: { x: 0, y: 2 * half } },
    { ...lobe(-half / 2, 1), to: { x: -half, y: half } },
    { kind: 'line', to: start },
  ];
  return centreOutline({ rings: [{ start, segments }] });
}

export const heartRule = straightWalls<Heart>({
  outline,
  areaMm2: (heart) => sideMm(heart) ** 2 * (1 + Math.PI / 4),
  perimeterMm: (heart) => sideMm(heart) * (2 + Math.PI),
});
