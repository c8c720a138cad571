/** Oval tin, an ellipse: A = πab; the perimeter has no closed form and is integrated to a relative 1e-11. */
import type { Outline } from '../../domain/outline.ts';
import type { Oval } from '../../domain/shape.ts';
import { exactOutlinePerimeterMm } from '../outline/perimeter.ts';
import { ellipseRing } from '../outline/rings.ts';
import { straightWalls } from './straight-walls.ts';

const outline = ({ lengthMm, widthMm }: Oval): Outline => ({
  rings: [ellipseRing(lengthMm / 2, widthMm / 2)],
});

export const ovalRule = straightWalls<Oval>({
  outline,
  areaMm2: ({ lengthMm, widthMm }) => (Math.PI * lengthMm * widthMm) / 4,
  perimeterMm: (oval) => exactOutlinePerimeterMm(outline(oval)),
});
