/** Rectangular tin with upright walls: A = length × width. */
import type { Rectangle } from '../../domain/shape.ts';
import { rectangleOutline } from '../outline/rings.ts';
import { straightWalls } from './straight-walls.ts';

export const rectangleRule = straightWalls<Rectangle>({
  outline: ({ lengthMm, widthMm }) => rectangleOutline(lengthMm, widthMm),
  areaMm2: ({ lengthMm, widthMm }) => lengthMm * widthMm,
  perimeterMm: ({ lengthMm, widthMm }) => 2 * (lengthMm + widthMm),
});
