/** One tin of every kind, and a few variations, for everybody's tests. Invented. */
import type { Outline } from '../../src/domain/outline.ts';
import type { Shape, ShapeKind } from '../../src/domain/shape.ts';
import type { Tin } from '../../src/domain/tin.ts';

const INCH = 25.4;

/** A square plate of 120 mm with a square hole of 60 mm: area 10 800 mm², walls 720 mm. */
const FRAME_OUTLINE: Outline = {
  rings: [60, 30].map((half) => ({
    start: { x: -half, y: -half },
    segments: [
      { kind: 'line', to: { x: half, y: -half } },
      { kind: 'line', to: { x: half, y: half } },
      { kind: 'line', to: { x: -half, y: half } },
      { kind: 'line', to: { x: -half, y: -half } },
    ],
  })),
};

function tin(id: string, name: string, shape: Shape, depthMm: number): Tin {
  return { id, name, shape, depthMm, owned: 1, unit: 'in' };
}

export const TIN_OF_KIND: { [K in ShapeKind]: Tin } = {
  round: tin('round-8', 'Eight-inch round', { kind: 'round', acrossMm: 8 * INCH }, 3 * INCH),
  square: tin('square-8', 'Eight-inch square', { kind: 'square', sideMm: 8 * INCH }, 3 * INCH),
  rectangle: tin(
    'tray-13-9',
    'Tray-bake tin',
    { kind: 'rectangle', lengthMm: 13 * INCH, widthMm: 9 * INCH },
    2 * INCH,
  ),
  loaf: tin(
    'loaf-9-5',
    'Two-pound loaf tin',
    {
      kind: 'loaf',
      lengthMm: 9 * INCH,
      widthMm: 5 * INCH,
      baseLengthMm: 8 * INCH,
      baseWidthMm: 4 * INCH,
    },
    2.75 * INCH,
  ),
  hexagon: tin(
    'hexagon-8',
    'Eight-inch hexagon',
    { kind: 'hexagon', acrossMm: 8 * INCH, measured: 'flats' },
    3 * INCH,
  ),
  octagon: tin(
    'octagon-8',
    'Eight-inch octagon',
    { kind: 'octagon', acrossMm: 8 * INCH, measured: 'corners' },
    3 * INCH,
  ),
  'long-octagon': tin(
    'long-octagon-12-9',
    'Long octagon',
    { kind: 'long-octagon', lengthMm: 12 * INCH, widthMm: 9 * INCH, slantMm: 3 * INCH },
    3 * INCH,
  ),
  oval: tin('oval-10', 'Ten-inch oval', { kind: 'oval', lengthMm: 10 * INCH, widthMm: 8 * INCH }, 3 * INCH),
  heart: tin(
    'heart-8',
    'Eight-inch heart',
    { kind: 'heart', acrossMm: 8 * INCH, measured: 'across' },
    3 * INCH,
  ),
  petal: tin('petal-9', 'Six-petal tin', { kind: 'petal', petals: 6, acrossMm: 9 * INCH }, 3 * INCH),
  ring: tin('ring-10', 'Ten-inch ring', { kind: 'ring', acrossMm: 10 * INCH, tubeMm: 3 * INCH }, 3 * INCH),
  dome: tin('dome-6', 'Six-inch dome', { kind: 'dome', acrossMm: 6 * INCH }, 3 * INCH),
  outline: tin('frame', 'Frame tin', { kind: 'outline', outlineId: 'frame', outline: FRAME_OUTLINE }, 60),
  measured: tin('old-bowl', 'Old fluted tin', { kind: 'measured', volumeMl: 1850 }, 75),
};

const TAPERED_TINS: Tin[] = [
  tin(
    'round-8-tapered',
    'Tapered eight-inch round',
    { kind: 'round', acrossMm: 8 * INCH, baseAcrossMm: 7.5 * INCH },
    3 * INCH,
  ),
  tin(
    'square-8-tapered',
    'Tapered eight-inch square',
    { kind: 'square', sideMm: 8 * INCH, baseSideMm: 7 * INCH },
    2 * INCH,
  ),
  tin(
    'ring-10-tapered',
    'Tapered ring',
    {
      kind: 'ring',
      acrossMm: 10 * INCH,
      tubeMm: 2 * INCH,
      baseAcrossMm: 9 * INCH,
      baseTubeMm: 2.5 * INCH,
    },
    3.5 * INCH,
  ),
];

/** A ten-inch ring that holds a little less water than its formula says. */
const WATER_MEASURED_RING: Tin = { ...TIN_OF_KIND.ring, id: 'ring-10-water', measuredVolumeMl: 3400 };

/** Every sample, one of each kind first. */
export const SAMPLE_TINS: Tin[] = [...Object.values(TIN_OF_KIND), ...TAPERED_TINS, WATER_MEASURED_RING];
