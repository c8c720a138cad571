/**
 * Long octagon: a rectangle l × w whose corners are cut at 45° by walls of length s, each cutting c = s/√2 off two
 * sides. A = l·w − 4·c²/2 = l·w − s²; P = 2(l + w) − 8c + 4s = 2(l + w) − 4(√2 − 1)·s.
 */
import type { Outline } from '../../domain/outline.ts';
import type { LongOctagon } from '../../domain/shape.ts';
import { polygonOutline } from '../outline/rings.ts';
import { straightWalls } from './straight-walls.ts';

function outline({ lengthMm, widthMm, slantMm }: LongOctagon): Outline {
  const [x, y, cut] = [lengthMm / 2, widthMm / 2, slantMm * Math.SQRT1_2];
  return polygonOutline([
    { x: -x + cut, y: -y },
    { x: x - cut, y: -y },
    { x, y: -y + cut },
    { x, y: y - cut },
    { x: x - cut, y },
    { x: -x + cut, y },
    { x: -x, y: y - cut },
    { x: -x, y: -y + cut },
  ]);
}

export const longOctagonRule = straightWalls<LongOctagon>({
  outline,
  areaMm2: ({ lengthMm, widthMm, slantMm }) => lengthMm * widthMm - slantMm ** 2,
  perimeterMm: ({ lengthMm, widthMm, slantMm }) => 2 * (lengthMm + widthMm) - 4 * (Math.SQRT2 - 1) * slantMm,
});
