/** Areas of polygons against a general geometry library (clipper2-ts, a port of Clipper2). */
import { areaPathsD, FillRule, unionD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenOddAreaMm2 } from '../../../src/compute/outline/crossing.ts';
import {
  outlineAreaMm2,
  outlineCrossesItself,
  outlinePerimeterMm,
} from '../../../src/compute/outline/index.ts';
import type { Point } from '../../../src/domain/outline.ts';
import { ringOf, starPoints } from '../../samples/shapes.ts';

const RUNS = { numRuns: 1000, seed: 20261101 };
const coordinate = fc.integer({ min: -100, max: 100 });
const anyPolygon = fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength: 3, maxLength: 9 });
const radius = fc.double({ min: 0.8, max: 1, noNaN: true });

/** Rings of 100, 60, 36 … mm, each inside the last, wound either way. */
const nested = fc
  .array(fc.tuple(fc.array(radius, { minLength: 8, maxLength: 16 }), fc.boolean()), {
    minLength: 1,
    maxLength: 4,
  })
  .map((rings) =>
    rings.map(([radii, turned], level) => {
      const points = starPoints(radii.map((share) => share * 100 * 0.6 ** level));
      return turned ? points.reverse() : points;
    }),
  );

const libraryAreaMm2 = (polygons: Point[][]) => areaPathsD(unionD(polygons, [], FillRule.EvenOdd, 6));

function shuffled<T>(list: readonly T[], by: number): T[] {
  const at = by % list.length;
  return [...list.slice(at), ...list.slice(0, at)];
}

describe('outlineAreaMm2 and the geometry library', () => {
  it('agree on rings that nest, in any order and winding', () => {
    fc.assert(
      fc.property(nested, fc.nat(9), (polygons, turn) => {
        const outline = { rings: shuffled(polygons, turn).map(ringOf) };
        expect(Math.abs(outlineAreaMm2(outline) - libraryAreaMm2(polygons))).toBeLessThan(0.02);
        expect(outlineCrossesItself(outline)).toBe(false);
      }),
      RUNS,
    );
  });

  it('agree on the even-odd area of any polygons, crossing or not', () => {
    fc.assert(
      fc.property(fc.array(anyPolygon, { minLength: 1, maxLength: 3 }), (polygons) => {
        expect(Math.abs(evenOddAreaMm2(polygons) - libraryAreaMm2(polygons))).toBeLessThan(0.02);
      }),
      RUNS,
    );
  });

  it('call an outline crossed when, and only when, nesting would give another area', () => {
    fc.assert(
      fc.property(fc.array(anyPolygon, { minLength: 1, maxLength: 2 }), (polygons) => {
        const outline = { rings: polygons.map(ringOf) };
        const wrongBy = Math.abs(outlineAreaMm2(outline) - libraryAreaMm2(polygons));
        if (wrongBy > 0.5) expect(outlineCrossesItself(outline)).toBe(true);
        if (outlineCrossesItself(outline)) expect(wrongBy).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  it('walls are the lengths of all rings', () => {
    fc.assert(
      fc.property(nested, (polygons) => {
        const length = polygons
          .flatMap((polygon) => polygon.map((a, k) => [a, polygon[(k + 1) % polygon.length] ?? a] as const))
          .reduce((sum, [a, b]) => sum + Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2), 0);
        expect(outlinePerimeterMm({ rings: polygons.map(ringOf) })).toBeCloseTo(length, 2);
      }),
      RUNS,
    );
  });
});

describe('rings that touch or overlap', () => {
  const square = (x: number, y: number, side: number) =>
    ringOf([
      { x, y },
      { x: x + side, y },
      { x: x + side, y: y + side },
      { x, y: y + side },
    ]);
  it('two squares that share a wall are one floor, not a crossing', () => {
    const outline = { rings: [square(0, 0, 40), square(40, 0, 40)] };
    expect(outlineCrossesItself(outline)).toBe(false);
    expect(outlineAreaMm2(outline)).toBe(3200);
  });
  it('a hole that touches the wall in a corner is still a hole', () => {
    const outline = { rings: [square(0, 0, 40), square(0, 0, 10)] };
    expect(outlineCrossesItself(outline)).toBe(false);
    expect(outlineAreaMm2(outline)).toBe(1500);
  });
  it('two squares that overlap cross', () => {
    expect(outlineCrossesItself({ rings: [square(0, 0, 40), square(20, 20, 40)] })).toBe(true);
  });
  it('a figure of eight crosses itself', () => {
    const eight = ringOf([
      { x: 0, y: 0 },
      { x: 40, y: 40 },
      { x: 40, y: 0 },
      { x: 0, y: 40 },
    ]);
    expect(outlineCrossesItself({ rings: [eight] })).toBe(true);
  });
  it('a ring drawn twice over itself counts as crossed', () => {
    expect(outlineCrossesItself({ rings: [square(0, 0, 40), square(0, 0, 40)] })).toBe(true);
  });
});
