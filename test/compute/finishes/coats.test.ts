import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardAcrossMm } from '../../../src/compute/finishes/around.ts';
import { coatMl, domeCoatMl } from '../../../src/compute/finishes/coat.ts';
import { fillingAmounts } from '../../../src/compute/finishes/filling.ts';
import { grownAreaMm2 } from '../../../src/compute/finishes/grown-area.ts';
import { offsetAreaMm2 } from '../../../src/compute/finishes/offset-area.ts';
import { finishWeights } from '../../../src/compute/finishes/parts.ts';
import type { CakePlan } from '../../../src/compute/finishes/plan.ts';
import { rolledSheet } from '../../../src/compute/finishes/rolled.ts';
import { quantiseMl } from '../../../src/domain/quantise.ts';

const IN = 25.4;
const regular = (n: number, radius: number): { x: number; y: number }[] =>
  Array.from({ length: n }, (_, i) => ({
    x: radius * Math.cos((2 * Math.PI * i) / n),
    y: radius * Math.sin((2 * Math.PI * i) / n),
  }));
const round = (d: number): CakePlan => ({
  areaMm2: (Math.PI * d * d) / 4,
  perimeterMm: Math.PI * d,
  convex: true,
  corners: [],
  widthMm: d,
  heightMm: d,
  aroundMm: d,
  rings: [regular(1024, d / 2)],
});
const square = (s: number): CakePlan => ({
  areaMm2: s * s,
  perimeterMm: 4 * s,
  convex: true,
  corners: Array.from({ length: 4 }, () => Math.PI / 2),
  widthMm: s,
  heightMm: s,
  aroundMm: s * Math.SQRT2,
  rings: [regular(4, s / Math.SQRT2)],
});

describe('coats, fillings and sheets', () => {
  it('ganache round an 8 in square, 4 in high, as worked by hand', () => {
    const cake = square(8 * IN);
    expect(offsetAreaMm2(cake, 8)).toBeCloseTo(47_993.7, 1);
    expect(coatMl(cake, 4 * IN, 8)).toBeCloseTo(1065.0, 1);
    expect(coatMl(cake, 4 * IN, 8, 'sharp')).toBeCloseTo(1071.0, 1);
    const { makeG, partsG } = finishWeights(
      {
        parts: [
          { ingredientId: 'dark-chocolate', name: 'chocolate', parts: 2, fine: false },
          { ingredientId: 'cream', name: 'cream', parts: 1, fine: false },
        ],
        lossShare: 0.05,
        cookingLossShare: 0,
      },
      1224.8,
    );
    expect(makeG).toBeCloseTo(1286.0, 1);
    // By hand 857.4 and 428.7, each rounded up on the way.
    expect(partsG[0]).toBeCloseTo(857.36, 2);
    expect(partsG[1]).toBeCloseTo(428.68, 2);
  });

  it('sugarpaste over a coated 8 × 4 in round, as worked by hand', () => {
    const sheet = rolledSheet(round(8 * IN), 4 * IN, 4, 25);
    expect(sheet.form).toBe('round');
    expect(sheet.acrossMm).toBeCloseTo(456.4, 6);
    expect(sheet.rollMl).toBeCloseTo(654.4, 1);
    expect(sheet.onCakeMl).toBeCloseTo(389.15, 1);
    expect(Math.round(sheet.rollMl * 1.4)).toBe(916);
    expect(Math.round(sheet.onCakeMl * 1.4)).toBe(545);
  });

  it('a coat on a hemisphere is the difference of two hemispheres', () => {
    const expected = ((2 * Math.PI) / 3) * (84 ** 3 - 76 ** 3);
    expect(domeCoatMl(152, 76, 8) * 1000).toBeCloseTo(expected, 3);
  });

  it('a plan grown by formula and by the polygon library agree for rounds and squares', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 400, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (size, t) => {
          for (const plan of [round(size), square(size)]) {
            const byFormula = offsetAreaMm2(plan, t);
            expect(Math.abs(grownAreaMm2(plan.rings, t) / byFormula - 1)).toBeLessThan(1e-4);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it('a hole shrinks as the wall grows', () => {
    const ring = [regular(2048, 120), regular(2048, 40)];
    const expected = Math.PI * (128 ** 2 - 32 ** 2);
    expect(Math.abs(grownAreaMm2(ring, 8) / expected - 1)).toBeLessThan(2e-5);
  });

  it('a dam takes its band off the filling and no layer asks for filling', () => {
    const cake = round(200);
    const { fillingMl, damMl } = fillingAmounts(cake, 3, 8, 10);
    expect(fillingMl).toBeCloseTo((2 * Math.PI * 90 ** 2 * 8) / 1000, 6);
    expect(damMl).toBeCloseTo((2 * Math.PI * 190 * 25 * Math.PI) / 1000, 6);
    expect(fillingAmounts(cake, 1, 8, 10)).toEqual({ fillingMl: 0, damMl: 0 });
  });

  it('more width, height or thickness never asks for less', () => {
    const size = fc.double({ min: 80, max: 400, noNaN: true });
    const more = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 1, max: 15, noNaN: true }), more, (d, h, t, extra) => {
        const ml = (d2: number, h2: number, t2: number): number => quantiseMl(coatMl(round(d2), h2, t2));
        const base = ml(d, h, t);
        expect(ml(d + extra, h, t)).toBeGreaterThanOrEqual(base);
        expect(ml(d, h + extra, t)).toBeGreaterThanOrEqual(base);
        expect(ml(d, h, t + extra)).toBeGreaterThanOrEqual(base);
        expect(rolledSheet(round(d), h, t, 25).rollMl).toBeGreaterThan(
          rolledSheet(round(d), h, t, 25).onCakeMl,
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('boards go up to the next whole inch', () => {
    const settings = { ribbonOverlapMm: 20, boardMarginMm: 75, boxHeightClearanceMm: 50 };
    expect(boardAcrossMm(8 * IN, settings) / IN).toBeCloseTo(11, 9);
    expect(boardAcrossMm(9 * IN - 75, settings) / IN).toBeCloseTo(9, 9);
  });
});
