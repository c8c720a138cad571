import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EggRuling, mostServedBy, planEggs, wholeEggs } from '../../../src/compute/eggs/whole-eggs.ts';
import { equalWeights, line } from '../mixes/sample.ts';

const ruling: EggRuling = { shelledG: 50, tolerance: 0.06, otherwise: 'step-up' };

describe('whole eggs', () => {
  it.each([
    [4.15, 'nearest', 4],
    [4.3, 'step-up', 5],
    [4.81, 'nearest', 5],
    [0.4, 'step-up', 1],
    [1.5, 'step-up', 2],
    [12.5, 'nearest', 13],
  ] as const)('%d eggs: %s, %d', (exact, rule, whole) => {
    expect(wholeEggs(exact, ruling)).toEqual({ rule, whole });
  });

  it('weighs beyond the tolerance where the kitchen prefers that', () => {
    expect(wholeEggs(4.3, { ...ruling, otherwise: 'weigh' })).toEqual({ rule: 'weigh', whole: 5 });
  });

  it('does not step up for the noise of a count that is whole', () => {
    expect(wholeEggs(4.000001, { ...ruling, tolerance: 0 })).toEqual({ rule: 'nearest', whole: 4 });
  });

  it('never asks for fewer eggs when more are needed', () => {
    const count = fc.double({ min: 0.01, max: 60, noNaN: true });
    fc.assert(
      fc.property(count, count, fc.double({ min: 0, max: 0.2, noNaN: true }), (a, b, tolerance) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const set = { ...ruling, tolerance };
        expect(wholeEggs(less, set).whole).toBeLessThanOrEqual(wholeEggs(more, set).whole);
        expect(wholeEggs(less, set).whole).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 2000 },
    );
  });

  it('serves up to the most that a number of eggs is said to serve, and no more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (whole, tolerance) => {
          const set = { ...ruling, tolerance };
          const most = mostServedBy(whole, set);
          expect(wholeEggs(most - 1e-7, set).whole).toBeLessThanOrEqual(whole);
          expect(wholeEggs(most + 2e-5, set).whole).toBeGreaterThan(whole);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('eggs of a load', () => {
  const custard = [
    line('flour', 400),
    line('egg', 100, { role: 'egg', eggPart: 'egg' }),
    line('yolk', 68, { role: 'egg', eggPart: 'yolk' }),
  ];

  it('are counted in the kitchen’s own size', () => {
    expect(planEggs(equalWeights.formula, 1, ruling)?.exact).toBeCloseTo(5.104, 6);
  });

  it('let the largest count decide, and the others follow', () => {
    const plan = planEggs(custard, 1.1, ruling);
    expect(plan?.decidedBy).toBe('yolk');
    expect(plan?.whole).toBe(5);
    expect(plan?.factor).toBeCloseTo(5 / 4.4, 6);
    expect(plan?.parts.map(({ whole }) => whole)).toEqual([3, 5]);
  });

  it('never leave out what the formula has', () => {
    expect(planEggs(custard, 0.2, ruling)?.parts.map(({ whole }) => whole)).toEqual([1, 1]);
  });

  it('are none for a formula without', () => {
    expect(planEggs([line('flour', 100)], 1, ruling)).toBeNull();
  });
});
