/**
 * Petal tin: a regular n-gon of side a with a half disc on every side, n ≥ 3. Measured across the circle around
 * the whole outline (which settles odd n): across = a·(1 + cot(π/n)).
 * A = n/4·a²·cot(π/n) + n·πa²/8, P = n·πa/2.
 */
import type { Outline } from '../../domain/outline.ts';
import type { Petal } from '../../domain/shape.ts';
import { circularArc } from '../outline/arc.ts';
import { regularCorners } from '../outline/rings.ts';
import { centreOutline } from '../outline/transform.ts';
import { straightWalls } from './straight-walls.ts';

const cotangent = (petals: number): number => 1 / Math.tan(Math.PI / petals);
const sideMm = ({ petals, acrossMm }: Petal): number => acrossMm / (1 + cotangent(petals));

function outline(petal: Petal): Outline {
  const side = sideMm(petal);
  const corners = regularCorners(petal.petals, side / 2 / Math.sin(Math.PI / petal.petals));
  const segments = corners.map((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const middle = { x: (corner.x + next.x) / 2, y: (corner.y + next.y) / 2 };
    const from = Math.atan2(corner.y - middle.y, corner.x - middle.x);
    return { ...circularArc(middle, side / 2, from, Math.PI), to: next };
  });
  return centreOutline({ rings: corners.slice(0, 1).map((start) => ({ start, segments })) });
}

export const petalRule = straightWalls<Petal>({
  outline,
  areaMm2: (petal) => petal.petals * sideMm(petal) ** 2 * (cotangent(petal.petals) / 4 + Math.PI / 8),
  perimeterMm: (petal) => (petal.petals * Math.PI * sideMm(petal)) / 2,
});
