/** Batches over oven loads, against every way of sharing them out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  goTogether,
  groupBatches,
  type OvenBatch,
  type OvenRules,
  ovenMemory,
} from '../../../src/compute/oven/index.ts';
import { USUAL_OVEN_ROOM } from '../../../src/domain/work-settings.ts';

const memory = ovenMemory(USUAL_OVEN_ROOM);
const rules: OvenRules = { memory, togetherMin: 720 };

const SIZES = [102, 152, 178, 203, 229, 254];

const batch = (id: string, wanted: Partial<OvenBatch> & { across: number; count?: number }): OvenBatch => ({
  id,
  ovenC: 160,
  byMin: 50,
  mixMin: 25,
  standsMin: 30,
  neededBy: 10_000,
  tins: [
    {
      tinId: `round-${wanted.across}`,
      owned: 2,
      count: wanted.count ?? 1,
      footprint: { halfXMm: 0, halfYMm: 0, roundMm: wanted.across / 2 },
    },
  ],
  ...wanted,
});

const ids = (groups: OvenBatch[][]): string[][] => groups.map((group) => group.map(({ id }) => id).sort());

describe('oven loads', () => {
  it('ten, eight and six inches: the ten on one shelf, the others on the other', () => {
    const three = [254, 203, 152].map((across, at) => batch(`b${at}`, { across, mixMin: 10 }));
    expect(groupBatches(three, rules)).toMatchObject({ leastLoads: 1, proven: true });
  });

  it('two heats are two loads, the cooler first', () => {
    const two = [batch('hot', { across: 152, ovenC: 180 }), batch('cool', { across: 203 })];
    expect(ids(groupBatches(two, rules).groups)).toEqual([['cool'], ['hot']]);
  });

  it('a tin owned twice bakes two at a time', () => {
    const three = [0, 1, 2].map((at) => batch(`b${at}`, { across: 102, mixMin: 5 }));
    expect(groupBatches(three, rules)).toMatchObject({ leastLoads: 2, proven: true });
  });

  it('batter that stands five minutes is not mixed first of two', () => {
    const two = [0, 1].map((at) => batch(`b${at}`, { across: 152, standsMin: 5 }));
    expect(groupBatches(two, rules).groups).toHaveLength(2);
    const one = [batch('whisked', { across: 152, standsMin: 5 }), batch('creamed', { across: 178 })];
    expect(groupBatches(one, rules).groups).toHaveLength(1);
  });

  it('cakes for different days do not share a load', () => {
    const two = [batch('wednesday', { across: 152 }), batch('saturday', { across: 178, neededBy: 14_320 })];
    expect(groupBatches(two, rules).groups).toHaveLength(2);
  });

  const anyBatch = fc.record({
    across: fc.constantFrom(...SIZES),
    count: fc.integer({ min: 1, max: 2 }),
    ovenC: fc.constantFrom(160, 160, 180),
    byMin: fc.integer({ min: 20, max: 90 }),
    mixMin: fc.constantFrom(10, 20, 30),
    standsMin: fc.constantFrom(5, 20, 30, 60),
    neededBy: fc.constantFrom(10_000, 10_300, 12_000),
  });
  /** One in-oven batch cannot be more than the oven takes. */
  const someBatches = fc
    .array(anyBatch, { minLength: 1, maxLength: 6 })
    .map((wanted) =>
      wanted.map((each, at) => batch(`b${at}`, each)).filter((each) => goTogether([each], rules)),
    );

  /** Every partition of a list. */
  function partitions<T>(items: T[]): T[][][] {
    const [first, ...rest] = items;
    if (first === undefined) return [[]];
    return partitions(rest).flatMap((groups) => [
      [[first], ...groups],
      ...groups.map((group, at) => groups.map((other, index) => (index === at ? [first, ...group] : other))),
    ]);
  }

  it('are the fewest, and of those the shortest, of all ways there are', () => {
    const worth = (groups: OvenBatch[][]): number =>
      groups.reduce((sum, group) => sum + 1000 + Math.max(...group.map(({ byMin }) => byMin)), 0);
    let proven = 0;
    let asked = 0;
    fc.assert(
      fc.property(someBatches, (batches) => {
        const good = partitions(batches).filter((groups) =>
          groups.every((group) => goTogether(group, rules)),
        );
        const found = groupBatches(batches, rules);
        expect(worth(found.groups)).toBe(Math.min(...good.map(worth)));
        expect(found.leastLoads).toBeLessThanOrEqual(found.groups.length);
        asked += 1;
        if (found.proven) proven += 1;
      }),
      { numRuns: 80, seed: 43 },
    );
    expect(proven / asked).toBeGreaterThan(0.9);
  });

  it('more batches than can be weighed against each other still go in, with a bound', () => {
    const many = Array.from({ length: 14 }, (_, at) =>
      batch(`b${at}`, { across: SIZES[at % 6] ?? 102, standsMin: 60 }),
    );
    const found = groupBatches(many, rules);
    expect(found.groups.flat()).toHaveLength(14);
    expect(found.groups.every((group) => goTogether(group, rules))).toBe(true);
    expect(found.leastLoads).toBeGreaterThanOrEqual(3);
    expect(found.proven).toBe(false);
  });
});
