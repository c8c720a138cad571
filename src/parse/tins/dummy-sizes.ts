/** Which measurements a dummy tier of each shape has in an order: outside, because that is what is covered. */
import type { SizeKey } from './shape-sizes.ts';

export const DUMMY_SHAPES = [
  'round',
  'square',
  'rectangle',
  'oval',
  'hexagon',
  'octagon',
  'long-octagon',
  'heart',
  'petal',
] as const;
export type DummyShape = (typeof DUMMY_SHAPES)[number];

export const DUMMY_SIZES: Readonly<Record<DummyShape, readonly SizeKey[]>> = {
  round: ['across'],
  square: ['side'],
  rectangle: ['length', 'width'],
  oval: ['length', 'width'],
  hexagon: ['flats'],
  octagon: ['flats'],
  'long-octagon': ['length', 'width', 'slant'],
  heart: ['across'],
  petal: ['across'],
};
