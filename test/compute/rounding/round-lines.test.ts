import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundLines } from '../../../src/compute/rounding/round-lines.ts';
import { scaleStepG } from '../../../src/compute/rounding/scale-step.ts';
import { roundTogether } from '../../../src/compute/rounding/shared-rounding.ts';

const scale = { stepG: 5, fineStepG: 0.5 };
const total = (masses: number[]): number => masses.reduce((sum, g) => sum + g, 0);
const coarse = (exactG: number) => ({ exactG, fine: false });

describe('the scale step', () => {
  it.each([
    [250, 5],
    [125, 5],
    [124, 2],
    [49.9, 1],
    [24, 0.5],
    [12, 0.2],
    [4, 0.1],
    [2, 0.05],
    [0.6, 0.02],
  ])('for %d g is %d g', (amountG, stepG) => {
    expect(scaleStepG(amountG, false, scale)).toBe(stepG);
  });

  it('starts finer for raising agents, salt and spices', () => {
    expect(scaleStepG(20, true, scale)).toBe(0.5);
    expect(scaleStepG(12, true, scale)).toBe(0.2);
  });

  it('is the kitchen’s own where that is coarser than ours', () => {
    expect(scaleStepG(1000, false, { stepG: 10, fineStepG: 1 })).toBe(10);
    expect(scaleStepG(200, false, { stepG: 10, fineStepG: 1 })).toBe(5);
  });
});

describe('rounding together', () => {
  it('keeps the total nearest and gives the step to the largest remainder', () => {
    expect(roundTogether([202, 203, 148, 301], 5)).toEqual([200, 205, 150, 300]);
  });

  it('keeps equal amounts equal, and takes the total that is nearest then', () => {
    expect(roundTogether([248.4, 248.4, 248.4], 5)).toEqual([250, 250, 250]);
    expect(roundTogether([251, 252, 252, 252], 5)).toEqual([255, 250, 250, 250]);
  });

  it('leaves an empty list empty', () => {
    expect(roundTogether([], 5)).toEqual([]);
  });
});

const amounts = fc.array(
  fc.record({ exactG: fc.double({ min: 0.03, max: 5000, noNaN: true }), fine: fc.boolean() }),
  { minLength: 1, maxLength: 9 },
);

describe('rounding a mix', () => {
  it('rounds an equal-weights sponge to equal weights', () => {
    const lines = [248.37, 248.37, 248.37].map(coarse);
    expect(roundLines(lines, scale).map(({ grams }) => grams)).toEqual([250, 250, 250]);
  });

  it('never moves an ingredient by more than 2 %', () => {
    fc.assert(
      fc.property(amounts, (lines) => {
        roundLines(lines, scale).forEach(({ grams }, at) => {
          const exactG = lines[at]?.exactG ?? Number.NaN;
          expect(Math.abs(grams - exactG)).toBeLessThanOrEqual(0.02 * exactG + 1e-6);
        });
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps two pinches apart that only look equal to a milligram', () => {
    const pinches = [0.0505, 0.0514].map((exactG) => ({ exactG, fine: true }));
    roundLines(pinches, scale).forEach(({ grams }, at) => {
      const exactG = pinches[at]?.exactG ?? Number.NaN;
      expect(Math.abs(grams - exactG)).toBeLessThanOrEqual(0.02 * exactG + 1e-9);
    });
  });

  it('weighs every ingredient to a whole number of its own step', () => {
    fc.assert(
      fc.property(amounts, (lines) => {
        for (const { grams, stepG } of roundLines(lines, scale)) {
          expect(Math.abs(grams / stepG - Math.round(grams / stepG))).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('gives equal amounts equal weights, wherever they stand', () => {
    fc.assert(
      fc.property(amounts, fc.double({ min: 1, max: 900, noNaN: true }), (lines, twinG) => {
        const twins = [coarse(twinG), ...lines, coarse(twinG)];
        const rounded = roundLines(twins, scale);
        expect(rounded.at(0)?.grams).toBe(rounded.at(-1)?.grams);
      }),
      { numRuns: 1000 },
    );
  });

  it('is at least as near to the total as rounding each alone, where all share a step and may go either way', () => {
    const heavy = fc.array(fc.double({ min: 260, max: 5000, noNaN: true }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(heavy, (masses) => {
        const together = total(roundLines(masses.map(coarse), scale).map(({ grams }) => grams));
        const alone = total(masses.map((g) => Math.round(g / 5) * 5));
        expect(Math.abs(together - total(masses))).toBeLessThanOrEqual(
          Math.abs(alone - total(masses)) + 1e-6,
        );
        if (new Set(masses.map((g) => Math.round(g * 1000))).size === masses.length) {
          expect(Math.abs(together - total(masses))).toBeLessThanOrEqual(2.5 + 1e-6);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
