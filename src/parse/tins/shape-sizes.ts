/**
 * Which measurements does each shape need, and what are they called in kitchen.yaml and in a list of tins?
 * The measurements become a Shape here; whether they make sense is judged in tin-sense.ts.
 */
import { outlineBounds } from '../../compute/outline/index.ts';
import type { Outline } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import type { Shape, ShapeKind } from '../../domain/shape.ts';

export const SIZE_KEYS = [
  'across',
  'base_across',
  'side',
  'base_side',
  'length',
  'width',
  'base_length',
  'base_width',
  'flats',
  'corners',
  'point',
  'tube',
  'base_tube',
  'slant',
] as const;
export type SizeKey = (typeof SIZE_KEYS)[number];

/** Measurements in mm, by the names they have in content files. */
export type Sizes = Partial<Record<SizeKey, number>>;

export interface ShapeKeys {
  required: readonly SizeKey[];
  /** Exactly one of these. */
  oneOf: readonly SizeKey[];
  optional: readonly SizeKey[];
}

const keys = (
  required: readonly SizeKey[],
  optional: readonly SizeKey[] = [],
  oneOf: readonly SizeKey[] = [],
): ShapeKeys => ({ required, oneOf, optional });

export const SHAPE_SIZES: Readonly<Record<ShapeKind, ShapeKeys>> = {
  round: keys(['across'], ['base_across']),
  square: keys(['side'], ['base_side']),
  rectangle: keys(['length', 'width']),
  loaf: keys(['length', 'width'], ['base_length', 'base_width']),
  hexagon: keys([], [], ['flats', 'corners']),
  octagon: keys([], [], ['flats', 'corners']),
  'long-octagon': keys(['length', 'width', 'slant']),
  oval: keys(['length', 'width']),
  heart: keys([], [], ['across', 'point']),
  petal: keys(['across']),
  ring: keys(['across', 'tube'], ['base_across', 'base_tube']),
  dome: keys(['across']),
  outline: keys([], ['across']),
  measured: keys([]),
};

/** What a shape needs beyond lengths. */
export interface ShapeExtras {
  petals?: number;
  outlineId?: string;
  outline?: Outline;
  volumeMl?: number;
}

/** The shape with these measurements; null while one that it needs is missing. */
export function shapeOf(kind: ShapeKind, sizes: Sizes, extras: ShapeExtras): Shape | null {
  const { across, side, length, width, tube, slant } = sizes;
  switch (kind) {
    case 'round':
      return across === undefined
        ? null
        : { kind, acrossMm: across, ...base('baseAcrossMm', sizes.base_across) };
    case 'square':
      return side === undefined ? null : { kind, sideMm: side, ...base('baseSideMm', sizes.base_side) };
    case 'rectangle':
    case 'oval':
      return length === undefined || width === undefined ? null : { kind, lengthMm: length, widthMm: width };
    case 'loaf':
      return loafOf(sizes);
    case 'hexagon':
    case 'octagon':
      return oneOf(sizes, 'flats', 'corners', (acrossMm, measured) => ({ kind, acrossMm, measured }));
    case 'long-octagon':
      return length === undefined || width === undefined || slant === undefined
        ? null
        : { kind, lengthMm: length, widthMm: width, slantMm: slant };
    case 'heart':
      return oneOf(sizes, 'across', 'point', (acrossMm, measured) => ({ kind, acrossMm, measured }));
    case 'petal':
      return across === undefined || extras.petals === undefined
        ? null
        : { kind, petals: extras.petals, acrossMm: across };
    case 'ring':
      if (across === undefined || tube === undefined) return null;
      return {
        kind,
        acrossMm: across,
        tubeMm: tube,
        ...base('baseAcrossMm', sizes.base_across),
        ...base('baseTubeMm', sizes.base_tube),
      };
    case 'dome':
      return across === undefined ? null : { kind, acrossMm: across };
    case 'outline':
      return extras.outline === undefined || extras.outlineId === undefined
        ? null
        : {
            kind,
            outlineId: extras.outlineId,
            outline: extras.outline,
            ...base('acrossMm', across),
            ...boxOf(extras.outline),
          };
    case 'measured':
      return extras.volumeMl === undefined ? null : { kind, volumeMl: extras.volumeMl };
  }
}

function base<K extends string>(key: K, mm: number | undefined): Partial<Record<K, number>> {
  return mm === undefined ? {} : ({ [key]: mm } as Record<K, number>);
}

/** A loaf tin without base measurements has straight walls. */
function loafOf(sizes: Sizes): Shape | null {
  const { length, width } = sizes;
  if (length === undefined || width === undefined) return null;
  return {
    kind: 'loaf',
    lengthMm: length,
    widthMm: width,
    baseLengthMm: sizes.base_length ?? length,
    baseWidthMm: sizes.base_width ?? width,
  };
}

function oneOf<K extends SizeKey>(
  sizes: Sizes,
  first: K,
  second: K,
  make: (acrossMm: number, measured: K) => Shape,
): Shape | null {
  const one = sizes[first];
  const other = sizes[second];
  if (one !== undefined) return make(one, first);
  return other === undefined ? null : make(other, second);
}

/** The box around an outline; none for an empty one, which its own reader refuses. */
function boxOf(outline: Outline): { boxMm?: [number, number] } {
  if (outline.rings.length === 0) return {};
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  return { boxMm: [quantiseMm(maxX - minX), quantiseMm(maxY - minY)] };
}
