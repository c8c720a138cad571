/** What every kind of tin must keep, over a thousand random tins each. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  flattenOutline,
  outlineAreaMm2,
  outlineBounds,
  outlinePerimeterMm,
} from '../../../src/compute/outline/index.ts';
import {
  heightForVolumeMm,
  perimeterMm,
  planAreaMm2,
  tinBoundsMm,
  tinOutline,
  volumeMl,
  volumeToHeightMl,
} from '../../../src/compute/shapes/index.ts';
import type { Point } from '../../../src/domain/outline.ts';
import { SHAPE_KINDS, type Shape } from '../../../src/domain/shape.ts';
import { SHAPE_OF_KIND, scaledShape } from '../../samples/shapes.ts';

const RUNS = { numRuns: 1000, seed: 20261101 };
const depth = fc.double({ min: 10, max: 150, noNaN: true });
const part = fc.double({ min: 0, max: 1, noNaN: true });

/** Asked a hundred thousand times, so that only a failure goes to `expect`; what is no number is one. */
const near = (value: number, wanted: number, relative: number, absolute = 0): void => {
  const allowed = relative * Math.abs(wanted) + absolute;
  if (Math.abs(value - wanted) <= allowed) return;
  expect(Math.abs(value - wanted), `${value} against ${wanted}`).toBeLessThanOrEqual(allowed);
};

function shoelace(polygon: readonly Point[]): number {
  return polygon.reduce((sum, a, k) => {
    const b = polygon[(k + 1) % polygon.length] ?? a;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

/** The tin's section at a share of its depth, as a shape with upright walls. */
function section(shape: Shape, up: number, depthMm: number): Shape {
  const between = (base: number, rim: number) => base + (rim - base) * up;
  if (shape.kind === 'round') {
    return { kind: 'round', acrossMm: between(shape.baseAcrossMm ?? shape.acrossMm, shape.acrossMm) };
  }
  if (shape.kind === 'square')
    return { kind: 'square', sideMm: between(shape.baseSideMm ?? shape.sideMm, shape.sideMm) };
  if (shape.kind === 'loaf') {
    const lengthMm = between(shape.baseLengthMm, shape.lengthMm);
    return { kind: 'rectangle', lengthMm, widthMm: between(shape.baseWidthMm, shape.widthMm) };
  }
  if (shape.kind === 'ring') {
    const acrossMm = between(shape.baseAcrossMm ?? shape.acrossMm, shape.acrossMm);
    return { kind: 'ring', acrossMm, tubeMm: between(shape.baseTubeMm ?? shape.tubeMm, shape.tubeMm) };
  }
  if (shape.kind === 'dome') {
    // Pythagoras on the sphere through the rim and the lowest point.
    const sphere = ((shape.acrossMm / 2) ** 2 + depthMm ** 2) / (2 * depthMm);
    return { kind: 'dome', acrossMm: 2 * Math.sqrt(Math.max(0, sphere ** 2 - (sphere - up * depthMm) ** 2)) };
  }
  return shape;
}

/** Area of a section from its flattened outline alone: outer ring less the others. */
function sectionAreaMm2(cut: Shape, depthMm: number): number {
  const outline = tinOutline({ shape: cut, depthMm });
  if (outline === null) return Number.NaN;
  const areas = flattenOutline(outline, 1e-3).map((ring) => Math.abs(shoelace(ring)));
  return areas.reduce((sum, area, index) => (index === 0 ? area : sum - area), 0);
}

/** Simpson's rule over the height. Where walls are upright the section is the shape itself, and measured once. */
function integratedMl(shape: Shape, heightMm: number, depthMm: number): number {
  const panels = 2;
  const areas = new Map<Shape, number>();
  let sum = 0;
  for (let k = 0; k <= 2 * panels; k += 1) {
    const weight = k === 0 || k === 2 * panels ? 1 : k % 2 === 1 ? 4 : 2;
    const cut = section(shape, (heightMm / depthMm) * (k / (2 * panels)), depthMm);
    const area = areas.get(cut) ?? sectionAreaMm2(cut, depthMm);
    areas.set(cut, area);
    sum += weight * area;
  }
  return (sum * heightMm) / (6 * panels) / 1000;
}

/** The shape with one of its lengths grown by a twentieth, once for each; what takes away (a tube) grows by shrinking. */
function grownShapes(shape: Shape): Shape[] {
  if (shape.kind === 'outline') return [scaledShape(shape, 1.05)];
  return Object.entries(shape).flatMap(([key, value]) => {
    if (typeof value !== 'number' || key === 'petals') return [];
    return [{ ...shape, [key]: /tube|slant/i.test(key) ? value / 1.05 : value * 1.05 }];
  });
}

describe.each(SHAPE_KINDS)('a %s tin', (kind) => {
  const shape = SHAPE_OF_KIND[kind];

  it('holds nothing without depth, and more the deeper it is', () => {
    fc.assert(
      fc.property(shape, depth, (s, depthMm) => {
        expect(volumeMl({ shape: s, depthMm: 0 })).toBe(0);
        expect(volumeToHeightMl({ shape: s, depthMm }, 0)).toBe(0);
        const deeper = volumeMl({ shape: s, depthMm: depthMm * 1.1 });
        if (kind === 'measured') expect(deeper).toBeCloseTo(volumeMl({ shape: s, depthMm }), 2);
        else expect(deeper).toBeGreaterThan(volumeMl({ shape: s, depthMm }));
      }),
      RUNS,
    );
  });

  it('grows with each of its lengths', () => {
    fc.assert(
      fc.property(shape, depth, (s, depthMm) => {
        const grown = grownShapes(s);
        expect(grown.length).toBeGreaterThan(0);
        for (const larger of grown) {
          expect(volumeMl({ shape: larger, depthMm })).toBeGreaterThan(volumeMl({ shape: s, depthMm }));
        }
      }),
      RUNS,
    );
  });

  it('holds eight times as much when every length doubles', () => {
    fc.assert(
      fc.property(shape, depth, (s, depthMm) => {
        const double = { shape: scaledShape(s, 2), depthMm: 2 * depthMm };
        near(volumeMl(double), 8 * volumeMl({ shape: s, depthMm }), 1e-9, 0.005);
        const area = planAreaMm2({ shape: s, depthMm });
        if (area !== null) near(planAreaMm2(double) ?? 0, 4 * area, 1e-9, 0.03);
        const walls = perimeterMm({ shape: s, depthMm });
        if (walls !== null) near(perimeterMm(double) ?? 0, 2 * walls, 1e-9, 0.002);
      }),
      RUNS,
    );
  });

  it('fills steadily, agrees with integrating its sections, and goes on with the rim above it', () => {
    fc.assert(
      fc.property(shape, depth, part, part, (s, depthMm, a, b) => {
        const form = { shape: s, depthMm };
        const [low, high] = [Math.min(a, b) * depthMm, Math.max(a, b) * depthMm];
        expect(volumeToHeightMl(form, low)).toBeLessThanOrEqual(volumeToHeightMl(form, high));
        if (kind !== 'measured')
          near(volumeToHeightMl(form, high), integratedMl(s, high, depthMm), 1e-4, 0.001);
        else near(volumeToHeightMl(form, high), (volumeMl(form) * high) / depthMm, 1e-6, 0.001);
        const growth = planAreaMm2(form) ?? (volumeMl(form) * 1000) / depthMm;
        near(volumeToHeightMl(form, depthMm + 10) - volumeMl(form), growth / 100, 1e-6, 0.002);
      }),
      RUNS,
    );
  });

  it('gives back the height at which a volume stands, below and above the rim', () => {
    fc.assert(
      fc.property(shape, depth, fc.double({ min: 0.01, max: 1.3, noNaN: true }), (s, depthMm, share) => {
        const form = { shape: s, depthMm };
        const heightMm = share * depthMm;
        const volume = volumeToHeightMl(form, heightMm);
        // Volumes are kept to 0.001 mL: low in a dome that is more than 0.001 mm of height.
        const roundingMm = 0.001 + (0.6 * heightMm) / (1000 * volume);
        near(heightForVolumeMm(form, volume), heightMm, 1e-9, roundingMm);
      }),
      RUNS,
    );
  });

  it('scales its curve to the water that was measured', () => {
    fc.assert(
      fc.property(shape, depth, part, (s, depthMm, share) => {
        const form = { shape: s, depthMm };
        const water = { ...form, measuredVolumeMl: volumeMl(form) * 0.93 };
        near(volumeMl(water), volumeMl(form) * 0.93, 1e-9, 0.001);
        near(
          volumeToHeightMl(water, share * depthMm),
          0.93 * volumeToHeightMl(form, share * depthMm),
          1e-5,
          0.002,
        );
        near(heightForVolumeMm(water, volumeToHeightMl(water, depthMm * 0.7)), depthMm * 0.7, 1e-5, 0.002);
      }),
      RUNS,
    );
  });

  it('has an outline that agrees with its area, walls and box, centred on the origin', () => {
    fc.assert(
      fc.property(shape, depth, (s, depthMm) => {
        const form = { shape: s, depthMm };
        const outline = tinOutline(form);
        const box = tinBoundsMm(form);
        if (outline === null || box === null) {
          expect(kind).toBe('measured');
          expect([outline, box, planAreaMm2(form), perimeterMm(form)]).toEqual([null, null, null, null]);
          return;
        }
        near(outlineAreaMm2(outline), planAreaMm2(form) ?? 0, 1e-7, 0.02);
        near(outlinePerimeterMm(outline), perimeterMm(form) ?? 0, 1e-7, 0.002);
        const { minX, minY, maxX, maxY } = outlineBounds(outline);
        near(maxX - minX, box.widthMm, 0, 0.001);
        near(maxY - minY, box.heightMm, 0, 0.001);
        if (kind !== 'outline') expect(Math.abs(minX + maxX) + Math.abs(minY + maxY)).toBeLessThan(1e-4);
        const isInside = ({ x, y }: Point): boolean =>
          x >= minX - 1e-5 && x <= maxX + 1e-5 && y >= minY - 1e-5 && y <= maxY + 1e-5;
        expect(
          flattenOutline(outline, 0.5)
            .flat()
            .filter((point) => !isInside(point)),
        ).toEqual([]);
      }),
      RUNS,
    );
  });
});

describe('worked examples of the documentation', () => {
  const round = { shape: { kind: 'round', acrossMm: 203.2 } as const, depthMm: 76.2 };
  it('an 8 in round, 3 in deep', () => {
    expect([planAreaMm2(round), perimeterMm(round), volumeMl(round)]).toEqual([32429.28, 638.372, 2471.111]);
  });
  it('the floor of an 8 in ring about a 3 in tube', () => {
    const outline = tinOutline({ ...round, shape: { kind: 'ring', acrossMm: 203.2, tubeMm: 76.2 } });
    expect(outline === null ? 0 : outlineAreaMm2(outline)).toBe(27868.91);
  });
});

describe('impossible questions', () => {
  const form = { shape: { kind: 'round', acrossMm: 200 } as const, depthMm: 75 };
  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])(
    'a height or volume of %d is refused, not clamped',
    (amount) => {
      expect(() => volumeToHeightMl(form, amount)).toThrow(RangeError);
      expect(() => heightForVolumeMm(form, amount)).toThrow(RangeError);
    },
  );
  it('a tin without depth has no fill height', () => {
    expect(() => heightForVolumeMm({ ...form, depthMm: 0 }, 10)).toThrow(RangeError);
  });
});
