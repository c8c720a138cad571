import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPacks, type PackMix, type WholePack } from '../../../src/compute/shopping/cheapest-packs.ts';

/** Every mix that covers the need without a pack to spare, one by one. */
function bruteForce(needed: number, packs: readonly WholePack[]): PackMix | null {
  let best: PackMix | null = null;
  const counts = packs.map(() => 0);
  const walk = (at: number, price: number, size: number): void => {
    const pack = packs[at];
    if (pack === undefined) {
      if (size < needed) return;
      const all = counts.reduce((sum, one) => sum + one, 0);
      const found = { counts: [...counts], priceMinor: price, left: size - needed, packs: all };
      const order =
        best === null ? -1 : price - best.priceMinor || found.left - best.left || all - best.packs;
      if (order < 0) best = found;
      return;
    }
    for (let count = 0; count <= Math.ceil(needed / pack.size); count += 1) {
      counts[at] = count;
      walk(at + 1, price + count * pack.priceMinor, size + count * pack.size);
    }
    counts[at] = 0;
  };
  walk(0, 0, 0);
  return best;
}

const arbitraryPacks = fc.uniqueArray(
  fc.record({ size: fc.integer({ min: 1, max: 40 }), priceMinor: fc.integer({ min: 0, max: 60 }) }),
  { minLength: 1, maxLength: 3, selector: ({ size }) => size },
);

describe('cheapestPacks', () => {
  it('covers 1.3 kg with a kilo and a half, not with two kilos', () => {
    const packs = [
      { size: 500_000, priceMinor: 105 },
      { size: 1_000_000, priceMinor: 169 },
    ];
    expect(cheapestPacks(1_300_000, packs)).toEqual({
      counts: [1, 1],
      priceMinor: 274,
      left: 200_000,
      packs: 2,
    });
  });

  it('takes the large pack where it costs less than the small ones it replaces', () => {
    const eggs = [
      { size: 6, priceMinor: 175 },
      { size: 12, priceMinor: 305 },
    ];
    expect(cheapestPacks(11, eggs)?.counts).toEqual([0, 1]);
    expect(cheapestPacks(13, eggs)?.counts).toEqual([1, 1]);
    expect(cheapestPacks(19, eggs)?.counts).toEqual([0, 2]);
  });

  it('at equal cost leaves least over, then takes fewest packs', () => {
    const equal = [
      { size: 4, priceMinor: 100 },
      { size: 5, priceMinor: 100 },
    ];
    expect(cheapestPacks(8, equal)).toMatchObject({ counts: [2, 0], left: 0 });
    const double = [
      { size: 5, priceMinor: 100 },
      { size: 10, priceMinor: 200 },
    ];
    expect(cheapestPacks(20, double)).toMatchObject({ counts: [0, 2], packs: 2 });
  });

  it('buys nothing when nothing is needed, and knows no answer without packs', () => {
    expect(cheapestPacks(0, [{ size: 5, priceMinor: 1 }])).toEqual({
      counts: [0],
      priceMinor: 0,
      left: 0,
      packs: 0,
    });
    expect(cheapestPacks(5, [])).toBeNull();
  });

  it('is never dearer, wasteful or fiddlier than trying every mix', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), arbitraryPacks, (needed, packs) => {
        const best = bruteForce(needed, packs);
        const found = cheapestPacks(needed, packs);
        expect({ ...found, counts: null }).toEqual({ ...best, counts: null });
        const bought = packs.reduce((sum, { size }, at) => sum + size * (found?.counts[at] ?? 0), 0);
        const paid = packs.reduce(
          (sum, { priceMinor }, at) => sum + priceMinor * (found?.counts[at] ?? 0),
          0,
        );
        expect([bought - needed, paid]).toEqual([found?.left, found?.priceMinor]);
      }),
      { numRuns: process.env.TINWRIGHT_LONG ? 20_000 : 400 },
    );
  });

  it('finds an answer for a hundred kilograms in odd packs at once', () => {
    const packs = [
      { size: 454_000, priceMinor: 165 },
      { size: 907_000, priceMinor: 330 },
      { size: 1_000_000, priceMinor: 364 },
      { size: 250_001, priceMinor: 91 },
    ];
    const found = cheapestPacks(100_000_000, packs);
    const bought = packs.reduce((sum, { size }, at) => sum + size * (found?.counts[at] ?? 0), 0);
    expect(bought).toBeGreaterThanOrEqual(100_000_000);
  });
});
