/** Any drawn tin (numeral, letter, novelty) with upright walls: area and perimeter of the outline itself. */
import type { OutlineShape } from '../../domain/shape.ts';
import { exactOutlineAreaMm2 } from '../outline/area.ts';
import { exactOutlinePerimeterMm } from '../outline/perimeter.ts';
import { straightWalls } from './straight-walls.ts';

export const outlineRule = straightWalls<OutlineShape>({
  outline: ({ outline }) => outline,
  areaMm2: ({ outline }) => exactOutlineAreaMm2(outline),
  perimeterMm: ({ outline }) => exactOutlinePerimeterMm(outline),
});
