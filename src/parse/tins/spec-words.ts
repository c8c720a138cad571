/**
 * How each shape is described in a list of tins, as the words and measurements that follow its name.
 * `<across>` is a length; `<volume>` a volume; the rest are words to write.
 */
import type { ShapeKind } from '../../domain/shape.ts';

export interface SpecForm {
  /** Accepted word orders, in the order they are tried. */
  orders: readonly string[];
  /** A whole item that can be read. */
  example: string;
}

export const SPEC_FORMS: Readonly<Record<ShapeKind, SpecForm>> = {
  round: { orders: ['<across>', '<across> base <base_across>'], example: '1 x round 8in x 3in' },
  square: { orders: ['<side>', '<side> base <base_side>'], example: '1 x square 200mm x 75mm' },
  rectangle: { orders: ['<length> by <width>'], example: '1 x rectangle 9in by 13in x 2in' },
  loaf: {
    orders: ['<length> by <width>', '<length> by <width> base <base_length> by <base_width>'],
    example: '1 x loaf 9in by 5in base 8in by 4in x 2.75in',
  },
  hexagon: { orders: ['flats <flats>', 'corners <corners>'], example: '1 x hexagon flats 8in x 3in' },
  octagon: { orders: ['flats <flats>', 'corners <corners>'], example: '1 x octagon corners 8in x 3in' },
  'long-octagon': {
    orders: ['<length> by <width> slant <slant>'],
    example: '1 x long-octagon 12in by 9in slant 3in x 3in',
  },
  oval: { orders: ['<length> by <width>'], example: '1 x oval 10in by 8in x 3in' },
  heart: { orders: ['across <across>', 'point <point>'], example: '1 x heart across 8in x 3in' },
  petal: { orders: ['<across>'], example: '1 x petal6 9in x 3in' },
  ring: {
    orders: ['<across> tube <tube>', '<across> tube <tube> base <base_across> tube <base_tube>'],
    example: '1 x ring 10in tube 3in x 3in',
  },
  dome: { orders: ['<across>'], example: '1 x dome 6in' },
  outline: { orders: ['<id>'], example: '1 x outline numeral-5 x 3in' },
  measured: { orders: ['<volume>'], example: '1 x measured 1850ml x 75mm' },
};

/** Names that start a description: a shape, in one word or in several joined by hyphens, and for petals how many. */
export const SHAPE_NAME = /^([a-z]+(?:-[a-z]+)*)(\d+)?$/i;
