/** Areas, lengths and boxes of curves against fine polygons, and against the geometry library. */
import { areaPathsD, FillRule, unionD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointOnCubic } from '../../../src/compute/outline/flatten.ts';
import {
  centreOutline,
  flattenOutline,
  outlineAreaMm2,
  outlineBounds,
  outlinePath,
  outlinePerimeterMm,
  outlineSvgPath,
  transformOutline,
} from '../../../src/compute/outline/index.ts';
import { integrate } from '../../../src/compute/outline/integrate.ts';
import { exactOutlinePerimeterMm } from '../../../src/compute/outline/perimeter.ts';
import type { Outline, Point } from '../../../src/domain/outline.ts';

const RUNS = { numRuns: 1000, seed: 20261101 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Four cubics bulging from the corners of a square: never crossing. */
const pillow: fc.Arbitrary<Outline> = fc.array(mm(10, 60), { minLength: 8, maxLength: 8 }).map((bulge) => {
  const corners: Point[] = [
    { x: -60, y: -60 },
    { x: 60, y: -60 },
    { x: 60, y: 60 },
    { x: -60, y: 60 },
  ];
  const segments = corners.map((corner, k) => {
    const to = corners[(k + 1) % 4] ?? corner;
    const out = { x: (to.y - corner.y) / 120, y: (corner.x - to.x) / 120 };
    const handle = (share: number, reach: number): Point => ({
      x: corner.x + (to.x - corner.x) * share + out.x * reach,
      y: corner.y + (to.y - corner.y) * share + out.y * reach,
    });
    return {
      kind: 'cubic' as const,
      c1: handle(0.3, bulge[2 * k] ?? 10),
      c2: handle(0.7, bulge[2 * k + 1] ?? 10),
      to,
    };
  });
  return { rings: [{ start: { x: -60, y: -60 }, segments }] };
});

/** A slice of a turned ellipse, closed by a straight line. */
const slice: fc.Arbitrary<Outline> = fc
  .tuple(mm(20, 120), mm(20, 120), mm(-3, 3), mm(-6, 6), mm(1, 6))
  .map(([rx, ry, rotation, startAngle, sweep]) => {
    const at = (angle: number): Point => {
      const [x, y] = [rx * Math.cos(angle), ry * Math.sin(angle)];
      return {
        x: 30 + x * Math.cos(rotation) - y * Math.sin(rotation),
        y: -20 + x * Math.sin(rotation) + y * Math.cos(rotation),
      };
    };
    const to = at(startAngle + sweep);
    const arc = { kind: 'arc' as const, to, centre: { x: 30, y: -20 }, rx, ry, rotation, startAngle, sweep };
    return { rings: [{ start: at(startAngle), segments: [arc] }] };
  });

const curved = fc.oneof(pillow, slice);

function polygonLength(polygon: readonly Point[]): number {
  return polygon.reduce((sum, a, k) => {
    const b = polygon[(k + 1) % polygon.length] ?? a;
    return sum + Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);
  }, 0);
}

describe('curves', () => {
  it('outlineAreaMm2 agrees with the geometry library on a fine polygon', () => {
    fc.assert(
      fc.property(curved, (outline) => {
        const fine = flattenOutline(outline, 1e-3);
        const library = areaPathsD(unionD(fine, [], FillRule.EvenOdd, 6));
        // A chord within 0.001 mm of its curve misses at most that over the whole wall.
        const allowed = 1e-3 * outlinePerimeterMm(outline) + 0.02;
        expect(Math.abs(outlineAreaMm2(outline) - library)).toBeLessThan(allowed);
      }),
      RUNS,
    );
  });

  it('outlinePerimeterMm agrees with a fine polygon, which is never longer', () => {
    fc.assert(
      fc.property(curved, (outline) => {
        const length = flattenOutline(outline, 1e-3).reduce(
          (sum, polygon) => sum + polygonLength(polygon),
          0,
        );
        const exact = outlinePerimeterMm(outline);
        expect(length).toBeLessThanOrEqual(exact + 0.001);
        expect(exact - length).toBeLessThan(1e-4 * exact + 0.001);
      }),
      RUNS,
    );
  });

  it('outlineBounds is the box of the curve: nothing outside, every side touched', () => {
    fc.assert(
      fc.property(curved, (outline) => {
        const box = outlineBounds(outline);
        const points = flattenOutline(outline, 1e-3).flat();
        const xs = points.map(({ x }) => x);
        const ys = points.map(({ y }) => y);
        const gaps = [
          Math.min(...xs) - box.minX,
          box.maxX - Math.max(...xs),
          Math.min(...ys) - box.minY,
          box.maxY - Math.max(...ys),
        ];
        for (const gap of gaps) {
          expect(gap).toBeGreaterThan(-1e-9);
          expect(gap).toBeLessThan(2e-3);
        }
      }),
      RUNS,
    );
  });

  it('outlinePath keeps within 0.001 mm of an arc, y turned down', () => {
    fc.assert(
      fc.property(mm(5, 400), mm(0.2, 6.28), (radius, sweep) => {
        const to = { x: radius * Math.cos(sweep), y: radius * Math.sin(sweep) };
        const arc = { centre: { x: 0, y: 0 }, rx: radius, ry: radius, rotation: 0, startAngle: 0, sweep };
        const outline = {
          rings: [{ start: { x: radius, y: 0 }, segments: [{ kind: 'arc' as const, to, ...arc }] }],
        };
        let from: Point = { x: radius, y: 0 };
        for (const step of outlinePath(outline)) {
          if (step.op !== 'cubic') continue;
          const cubic = {
            c1: { x: step.x1, y: step.y1 },
            c2: { x: step.x2, y: step.y2 },
            to: { x: step.x, y: step.y },
          };
          for (let t = 0; t <= 1; t += 0.125) {
            const { x, y } = pointOnCubic(from, { kind: 'cubic', ...cubic }, t);
            // Coordinates are rounded to 0.0005 mm on top of the curve's own error.
            expect(Math.abs(Math.sqrt(x * x + y * y) - radius)).toBeLessThan(1.3e-3);
          }
          from = cubic.to;
        }
      }),
      RUNS,
    );
  });

  it('transformOutline scales area by the square and walls by the factor, wherever it is put', () => {
    fc.assert(
      fc.property(curved, mm(0.2, 3), mm(-4, 4), mm(-500, 500), (outline, scale, turn, dx) => {
        const moved = transformOutline(outline, { scale, turn, dx, dy: -dx / 2 });
        expect(Math.abs(outlineAreaMm2(moved) - scale ** 2 * outlineAreaMm2(outline))).toBeLessThan(0.2);
        expect(Math.abs(outlinePerimeterMm(moved) - scale * outlinePerimeterMm(outline))).toBeLessThan(0.01);
        const { minX, minY, maxX, maxY } = outlineBounds(centreOutline(moved));
        expect(Math.abs(minX + maxX) + Math.abs(minY + maxY)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });
});

describe('worked examples', () => {
  const circle = (radius: number): Outline => {
    const start = { x: radius, y: 0 };
    const arc = {
      centre: { x: 0, y: 0 },
      rx: radius,
      ry: radius,
      rotation: 0,
      startAngle: 0,
      sweep: 2 * Math.PI,
    };
    return { rings: [{ start, segments: [{ kind: 'arc', to: start, ...arc }] }] };
  };
  it('a circle of 100 mm radius: 31 415.93 mm², 628.319 mm, a box of 200 mm', () => {
    expect(outlineAreaMm2(circle(100))).toBe(31415.93);
    expect(outlinePerimeterMm(circle(100))).toBe(628.319);
    const { minX, maxX, minY, maxY } = outlineBounds(circle(100));
    expect([minX, maxX, minY, maxY].map((n) => Math.round(n * 1e9) / 1e9)).toEqual([-100, 100, -100, 100]);
  });
  it('a heart-shaped SVG path hangs its point downwards on the page', () => {
    const triangle: Outline = {
      rings: [
        {
          start: { x: 0, y: -10 },
          segments: [
            { kind: 'line', to: { x: 5, y: 10 } },
            { kind: 'line', to: { x: -5, y: 10 } },
          ],
        },
      ],
    };
    expect(outlineSvgPath(triangle)).toBe('M0 10L5 -10L-5 -10L0 10Z');
  });
  it('SVG paths never carry more than three decimals', () => {
    expect(outlineSvgPath(circle(33.3333333))).not.toMatch(/\.\d{4}/);
  });
  it('Gauss–Legendre on five points is exact for every power up to nine', () => {
    for (let power = 0; power <= 9; power += 1) {
      const exact = (2 ** (power + 1) - (-1) ** (power + 1)) / (power + 1);
      // No halvings: the nodes and weights alone must do it.
      expect(Math.abs(integrate((t) => t ** power, -1, 2, 0, 0) / exact - 1)).toBeLessThan(1e-13);
    }
  });
  it('the perimeter of a 10.75 × 7.875 in ellipse is 4aE(m) to nine figures', () => {
    const start = { x: 5375, y: 0 };
    const arc = {
      centre: { x: 0, y: 0 },
      rx: 5375,
      ry: 3937.5,
      rotation: 0,
      startAngle: 0,
      sweep: 2 * Math.PI,
    };
    const outline: Outline = { rings: [{ start, segments: [{ kind: 'arc', to: start, ...arc }] }] };
    expect(Math.abs(exactOutlinePerimeterMm(outline) / 1000 / 29.430619375851 - 1)).toBeLessThan(1e-9);
  });
  it('refuses a tolerance or scale of nothing', () => {
    expect(() => flattenOutline(circle(10), 0)).toThrow(RangeError);
    expect(() => transformOutline(circle(10), { scale: 0 })).toThrow(RangeError);
  });
});
