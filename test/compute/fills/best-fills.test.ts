import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestFills, type Fillable } from '../../../src/compute/fills/best-fills.ts';
import { batterForEggsG, fillsForBatter, fillsForEggs } from '../../../src/compute/fills/fillable.ts';
import { planMix } from '../../../src/compute/mixes/plan-mix.ts';
import { bigBowl, equalWeights } from '../mixes/sample.ts';

/** Every choice of tins, one by one. */
function everyChoice(shelf: readonly Fillable[]): number[][] {
  return shelf.reduce<number[][]>(
    (choices, { owned }) => choices.flatMap((c) => Array.from({ length: owned + 1 }, (_, n) => [...c, n])),
    [[]],
  );
}

const usedMg = (shelf: readonly Fillable[], counts: number[]): number =>
  counts.reduce((sum, count, at) => sum + count * Math.round((shelf[at]?.batterG ?? 0) * 1000), 0);

const shelves = fc
  .array(
    fc.record({ mg: fc.integer({ min: 50_000, max: 900_000 }), owned: fc.integer({ min: 1, max: 3 }) }),
    {
      minLength: 1,
      maxLength: 5,
    },
  )
  .map((tins) => tins.map(({ mg, owned }, at) => ({ id: `t${at}`, batterG: mg / 1000, owned })));

describe('best fills', () => {
  it('prefer the fill that leaves least, then fewer tins', () => {
    const shelf = [
      { id: 'small', batterG: 300, owned: 2 },
      { id: 'large', batterG: 600, owned: 1 },
    ];
    const found = bestFills(shelf, { batterG: 700 });
    expect(found.fills.map(({ tins }) => tins)).toEqual([
      [{ id: 'large', count: 1 }],
      [{ id: 'small', count: 2 }],
      [{ id: 'small', count: 1 }],
    ]);
    expect(found).toMatchObject({ total: 3, more: false, complete: true });
  });

  it('are those of trying every choice', () => {
    fc.assert(
      fc.property(
        shelves,
        fc.integer({ min: 0, max: 4_000_000 }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (shelf, haveMg, over) => {
          const mostMg = Math.round(haveMg * (1 + over));
          const fitting = everyChoice(shelf)
            .map((counts) => usedMg(shelf, counts))
            .filter((mg) => mg > 0 && mg <= mostMg);
          const bestCosts = fitting.map((mg) => Math.abs(haveMg - mg)).sort((a, b) => a - b);
          const found = bestFills(shelf, { batterG: haveMg / 1000, mostG: mostMg / 1000 });
          const costs = found.fills.map(({ leftG }) => Math.round(Math.abs(leftG) * 1000));
          expect(costs).toEqual(bestCosts.slice(0, 20));
          expect(found.total).toBe(fitting.length);
          expect(found.more).toBe(fitting.length > 20);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('respect what is owned, and never give the same fill twice', () => {
    fc.assert(
      fc.property(shelves, fc.integer({ min: 100, max: 4000 }), (shelf, batterG) => {
        const { fills } = bestFills(shelf, { batterG });
        expect(new Set(fills.map(({ tins }) => JSON.stringify(tins))).size).toBe(fills.length);
        for (const { tins } of fills) {
          for (const { id, count } of tins) {
            expect(count).toBeLessThanOrEqual(shelf.find((tin) => tin.id === id)?.owned ?? 0);
          }
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('say when the shelf was too large to try everything', () => {
    const shelf = Array.from({ length: 40 }, (_, at) => ({ id: `t${at}`, batterG: 100 + at, owned: 4 }));
    const found = bestFills(shelf, { batterG: 3000, cap: 500 });
    expect(found.complete).toBe(false);
    expect(found.fills.length).toBe(20);
  });
});

describe('fills for eggs', () => {
  const input = { recipe: equalWeights, formula: equalWeights.formula, kitchen: bigBowl };

  it('never need more eggs than there are', () => {
    for (let eggs = 1; eggs <= 14; eggs += 1) {
      for (const { tins } of fillsForEggs(input, eggs)?.fills ?? []) {
        const asks = tins.flatMap(({ id, count }) => {
          const tin = bigBowl.tins.find((one) => one.id === id);
          return tin === undefined ? [] : [{ tin, count }];
        });
        const mix = planMix({ recipe: equalWeights, formula: equalWeights.formula, asks, kitchen: bigBowl });
        expect(mix.ok && mix.value.eggs?.whole).toBeLessThanOrEqual(eggs);
      }
    }
  });

  it('make the formula’s batter in proportion', () => {
    expect(batterForEggsG(input, 5)).toBeCloseTo(1005.2, 2);
    expect(batterForEggsG({ ...input, formula: [] }, 5)).toBeNull();
  });

  it('can be asked for an amount of batter instead', () => {
    const best = fillsForBatter(input, 1100).fills[0];
    expect(best?.usedG).toBeLessThanOrEqual(1100);
    expect(best?.usedG).toBeGreaterThan(900);
  });
});
