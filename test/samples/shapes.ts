/** Random tins of every kind, within what a kitchen might own, and their sizes doubled. */
import fc from 'fast-check';
import type { Outline, Point, Segment } from '../../src/domain/outline.ts';
import type { Shape, ShapeKind } from '../../src/domain/shape.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const share = fc.double({ min: 0.6, max: 1, noNaN: true });

/** Corners round the origin at growing angles: a ring that cannot cross itself. */
export function starPoints(radii: readonly number[]): Point[] {
  return radii.map((radius, index) => {
    const angle = (2 * Math.PI * index) / radii.length;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}

export function ringOf(points: readonly Point[]) {
  const start = points[0] ?? { x: 0, y: 0 };
  return { start, segments: points.slice(1).map((to): Segment => ({ kind: 'line', to })) };
}

/** An outer ring of radii 60–120 mm and a hole of radii 10–50 mm, either way round. */
const drawn: fc.Arbitrary<Outline> = fc
  .tuple(
    fc.array(mm(60, 120), { minLength: 5, maxLength: 12 }),
    fc.array(mm(10, 40), { minLength: 5, maxLength: 12 }),
    fc.boolean(),
  )
  .map(([outer, hole, turned]) => {
    const inner = starPoints(hole);
    return { rings: [ringOf(starPoints(outer)), ringOf(turned ? inner.reverse() : inner)] };
  });

export const SHAPE_OF_KIND: { [K in ShapeKind]: fc.Arbitrary<Shape> } = {
  round: fc.tuple(mm(50, 400), share, fc.boolean()).map(([acrossMm, part, tapered]) => ({
    kind: 'round',
    acrossMm,
    ...(tapered ? { baseAcrossMm: acrossMm * part } : {}),
  })),
  square: fc.tuple(mm(50, 400), share, fc.boolean()).map(([sideMm, part, tapered]) => ({
    kind: 'square',
    sideMm,
    ...(tapered ? { baseSideMm: sideMm * part } : {}),
  })),
  rectangle: fc.record({ kind: fc.constant('rectangle'), lengthMm: mm(50, 500), widthMm: mm(50, 400) }),
  loaf: fc.tuple(mm(100, 400), mm(60, 200), share, share).map(([lengthMm, widthMm, first, second]) => ({
    kind: 'loaf',
    lengthMm,
    widthMm,
    baseLengthMm: lengthMm * first,
    baseWidthMm: widthMm * second,
  })),
  hexagon: fc.record({
    kind: fc.constant('hexagon'),
    acrossMm: mm(50, 400),
    measured: fc.constantFrom('flats', 'corners'),
  }),
  octagon: fc.record({
    kind: fc.constant('octagon'),
    acrossMm: mm(50, 400),
    measured: fc.constantFrom('flats', 'corners'),
  }),
  'long-octagon': fc
    .tuple(mm(50, 500), mm(50, 400), fc.double({ min: 0.2, max: 0.9, noNaN: true }))
    .map(([lengthMm, widthMm, part]) => ({
      kind: 'long-octagon',
      lengthMm,
      widthMm,
      slantMm: (part * Math.min(lengthMm, widthMm)) / Math.SQRT2,
    })),
  oval: fc.record({ kind: fc.constant('oval'), lengthMm: mm(50, 400), widthMm: mm(50, 400) }),
  heart: fc.record({
    kind: fc.constant('heart'),
    acrossMm: mm(50, 400),
    measured: fc.constantFrom('across', 'point'),
  }),
  petal: fc.record({
    kind: fc.constant('petal'),
    petals: fc.integer({ min: 3, max: 12 }),
    acrossMm: mm(50, 400),
  }),
  ring: fc
    .tuple(mm(180, 400), mm(20, 40), share, share, fc.boolean())
    .map(([acrossMm, tubeMm, first, second, tapered]) => ({
      kind: 'ring',
      acrossMm,
      tubeMm,
      ...(tapered ? { baseAcrossMm: acrossMm * first, baseTubeMm: tubeMm / second } : {}),
    })),
  dome: fc.record({ kind: fc.constant('dome'), acrossMm: mm(50, 400) }),
  outline: drawn.map((outline) => ({ kind: 'outline', outlineId: 'random', outline })),
  measured: mm(200, 6000).map((volumeMl) => ({ kind: 'measured', volumeMl })),
};

function scaledOutline({ rings }: Outline, factor: number): Outline {
  const at = ({ x, y }: Point): Point => ({ x: x * factor, y: y * factor });
  return {
    rings: rings.map(({ start, segments }) => ringOf([at(start), ...segments.map(({ to }) => at(to))])),
  };
}

/** Every length of the shape multiplied; a measured tin's water grows with the cube. */
export function scaledShape(shape: Shape, factor: number): Shape {
  if (shape.kind === 'outline') return { ...shape, outline: scaledOutline(shape.outline, factor) };
  if (shape.kind === 'measured') return { ...shape, volumeMl: shape.volumeMl * factor ** 3 };
  const entries = Object.entries(shape).map(([key, value]) => [
    key,
    key.endsWith('Mm') && typeof value === 'number' ? value * factor : value,
  ]);
  return Object.fromEntries(entries) as Shape;
}
