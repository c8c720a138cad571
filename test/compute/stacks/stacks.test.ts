import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cakePlan } from '../../../src/compute/finishes/cake-plan.ts';
import type { CakePlan } from '../../../src/compute/finishes/plan.ts';
import { type StackTier, stackPlan } from '../../../src/compute/stacks/stack-plan.ts';
import { type StackAsk, stacksFor, type TierChoice } from '../../../src/compute/stacks/stacks-for.ts';
import { supportCount, supportsUnder } from '../../../src/compute/stacks/supports.ts';
import { tierStands } from '../../../src/compute/stacks/tier-stands.ts';
import type { Shape } from '../../../src/domain/shape.ts';
import { TIN_OF_KIND } from '../../samples/tins.ts';

const IN = 25.4;

function planOf(shape: Shape): CakePlan {
  const plan = cakePlan({ shape, depthMm: 75 });
  if (plan === null) throw new Error('no plan');
  return plan;
}
const round = (inches: number): CakePlan => planOf({ kind: 'round', acrossMm: inches * IN });
const square = (inches: number): CakePlan => planOf({ kind: 'square', sideMm: inches * IN });

describe('which tier stands on which', () => {
  // Common practice, no source: two inches between tiers, measured across.
  it.each([
    ['a 6 in round on an 8 in round', round(6), round(8), true],
    ['an 8 in round on an 8 in round', round(8), round(8), false],
    ['a 7 in round on an 8 in round', round(7), round(8), false],
    ['a 6 in square on an 8 in square', square(6), square(8), true],
    ['a 6 in round on an 8 in square', round(6), square(8), true],
    // Corners of a 6 in square lie 4.24 in from the middle: with an inch to spare they need 10.5 in.
    ['a 6 in square on a 10 in round', square(6), round(10), false],
    ['a 6 in square on an 11 in round', square(6), round(11), true],
    ['a 13 × 9 in tray on a 12 in round', planOf(TIN_OF_KIND.rectangle.shape), round(12), false],
    ['a 6 in round on a 13 × 9 in tray', round(6), planOf(TIN_OF_KIND.rectangle.shape), true],
  ])('%s: %s', (_name, upper, lower, stands) => {
    expect(tierStands(upper, lower)).toBe(stands);
  });

  it('needs cake under the middle: nothing stands on a ring', () => {
    expect(tierStands(round(4), planOf({ kind: 'ring', acrossMm: 254, tubeMm: 76 }))).toBe(false);
  });
});

describe('stacks for a number of portions', () => {
  const byWidth =
    (widths: number[]): StackAsk['stands'] =>
    (upper, lower) =>
      (widths[upper] ?? 0) + 50 <= (widths[lower] ?? 0);

  // Worked by hand: 36 + 24 = 60 exactly, 36 + 14 + 24 has 14 over, 52 + 8 = 60 in two tiers, 52 + 14 has 6 over.
  const tiers: TierChoice[] = [
    { tinId: 'round-4', portions: 8, batterG: 200 },
    { tinId: 'round-6', portions: 14, batterG: 450 },
    { tinId: 'round-8', portions: 24, batterG: 800 },
    { tinId: 'round-10', portions: 36, batterG: 1250 },
    { tinId: 'round-12', portions: 52, batterG: 1800 },
  ];
  const ask: StackAsk = {
    wanted: 60,
    tiers,
    stands: byWidth([100, 150, 200, 250, 300]),
    mostTiers: 5,
    keepsTopTier: false,
    most: 3,
  };

  it('gives fewest portions over first, then fewest tiers, then least batter', () => {
    const answer = stacksFor(ask);
    expect(answer.stacks).toEqual([
      { tinIds: ['round-12', 'round-4'], portions: 60, surplus: 0, batterG: 2000 },
      { tinIds: ['round-10', 'round-8'], portions: 60, surplus: 0, batterG: 2050 },
      { tinIds: ['round-12', 'round-6'], portions: 66, surplus: 6, batterG: 2250 },
    ]);
    expect(answer.hasMore).toBe(true);
    expect(answer.complete).toBe(true);
  });

  it('does not count a top tier that is kept', () => {
    const answer = stacksFor({ ...ask, keepsTopTier: true });
    expect(answer.stacks[0]?.tinIds).toEqual(['round-10', 'round-8', 'round-4']);
    expect(answer.stacks[0]?.portions).toBe(60);
  });

  it('says so when nothing reaches the number', () => {
    expect(stacksFor({ ...ask, wanted: 500 })).toEqual({ stacks: [], hasMore: false, complete: true });
  });

  it('equals trying everything', () => {
    const choice = fc.record({
      tinId: fc.constant('tin'),
      portions: fc.integer({ min: 1, max: 40 }),
      batterG: fc.integer({ min: 100, max: 3000 }),
    });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(choice, fc.integer({ min: 100, max: 320 })), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 1, max: 4 }),
        fc.boolean(),
        (items, wanted, mostTiers, keepsTopTier) => {
          const own = items.map(([tier], at) => ({ ...tier, tinId: `tin-${at}` }));
          const widths = items.map(([, width]) => width);
          const stands = byWidth(widths);
          const answer = stacksFor({ wanted, tiers: own, stands, mostTiers, keepsTopTier, most: 1000 });
          const chains = Array.from({ length: 2 ** own.length - 1 }, (_, set) =>
            own
              .map((_tier, at) => at)
              .filter((at) => ((set + 1) >> at) & 1)
              .sort((a, b) => (widths[b] ?? 0) - (widths[a] ?? 0)),
          ).filter(
            (chain) =>
              chain.length <= mostTiers &&
              chain.every((upper, at) => at === 0 || stands(upper, chain[at - 1] ?? 0)),
          );
          const sums = chains
            .filter((chain) => !keepsTopTier || chain.length > 1)
            .map((chain) =>
              (keepsTopTier ? chain.slice(0, -1) : chain).reduce(
                (sum, at) => sum + (own[at]?.portions ?? 0),
                0,
              ),
            )
            .filter((sum) => sum >= wanted)
            .sort((a, b) => a - b);
          expect(answer.stacks.map(({ portions }) => portions)).toEqual(sums);
        },
      ),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe('supports', () => {
  // Common practice, no source: max(4, half the width in inches, up); three at four inches.
  it.each([
    [4, 3],
    [6, 4],
    [8, 4],
    [9, 5],
    [10, 5],
    [12, 6],
  ])('%s in round: %s', (inches, count) => {
    expect(supportCount(round(inches))).toBe(count);
    const { places } = supportsUnder(round(inches));
    expect(places).toHaveLength(count);
    for (const { x, y } of places) expect(Math.hypot(x, y)).toBeCloseTo((inches * IN) / 2 - 25, 2);
  });

  it('stand in the corners of a square, 25 mm in', () => {
    const { count, places } = supportsUnder(square(8));
    expect(count).toBe(4);
    for (const { x, y } of places) {
      expect(Math.abs(x)).toBeCloseTo(76.6, 1);
      expect(Math.abs(y)).toBeCloseTo(76.6, 1);
    }
    expect(new Set(places.map(({ x, y }) => `${Math.sign(x)}${Math.sign(y)}`)).size).toBe(4);
  });

  it('are even under anything with corners, and balanced about the middle', () => {
    const { count, places } = supportsUnder(square(10));
    expect(count).toBe(6);
    expect(Math.abs(places.reduce((sum, { x }) => sum + x, 0))).toBeLessThan(0.1);
    expect(Math.abs(places.reduce((sum, { y }) => sum + y, 0))).toBeLessThan(0.1);
  });

  it('have no place where nothing is left inside', () => {
    expect(supportsUnder(planOf({ kind: 'round', acrossMm: 45 })).places).toEqual([]);
  });
});

describe('a stack from the table up', () => {
  const tier = (inches: number, heightMm: number, weightG: number): StackTier => ({
    name: `${inches} in`,
    plan: round(inches),
    coatedAcrossMm: inches * IN + 16,
    coatedHeightMm: heightMm,
    weightG,
  });
  const boards = { drumAcrossMm: 355.6, drumThicknessMm: 12, cardThicknessMm: 3 };

  it('adds up, worked by hand', () => {
    const stack = stackPlan([tier(10, 110, 3800), tier(8, 110, 2500), tier(6, 160, 2100)], boards, false);
    // 12 + 110 = 122; + 3 = 125; + 110 = 235; + 3 = 238; + 160 + 3 for the card inside = 401.
    expect(stack.tiers.map(({ footMm, topMm }) => [footMm, topMm])).toEqual([
      [12, 122],
      [125, 235],
      [238, 401],
    ]);
    expect(stack.totalHeightMm).toBe(401);
    expect(stack.totalWeightG).toBe(8400);
    // The ten-inch carries 2500 + 2100 on the supports that an eight-inch tier gets.
    expect(stack.tiers[0]?.supports).toMatchObject({ count: 4, lengthMm: 110, carriesG: 4600 });
    expect(stack.tiers[1]?.supports).toMatchObject({ count: 4, carriesG: 2100 });
    expect(stack.tiers[2]?.supports).toBeNull();
    expect(stack.tiers.map(({ innerBoardMm }) => innerBoardMm)).toEqual([null, null, 80]);
    // Half of the six-inch stands on the card inside.
    expect(stack.tiers[2]?.innerSupports).toMatchObject({ count: 4, lengthMm: 80, carriesG: 1050 });
    expect(stack.dowel).toEqual({ lengthMm: 364 });
  });

  it('holds up a tall tier in two halves: no support goes through the card inside', () => {
    const [tall] = stackPlan([tier(8, 160, 3000), tier(6, 110, 1500)], boards, false).tiers;
    expect(tall).toMatchObject({ footMm: 12, topMm: 175, innerBoardMm: 80 });
    expect(tall?.innerSupports).toMatchObject({ count: 4, lengthMm: 80, carriesG: 3000 });
    expect(tall?.supports).toMatchObject({ count: 4, lengthMm: 80, carriesG: 1500 });
  });

  it('asks for a dowel in two tiers only when they travel together', () => {
    const two = [tier(8, 110, 2500), tier(6, 110, 1500)];
    expect(stackPlan(two, boards, false).dowel).toBeNull();
    expect(stackPlan(two, boards, true).dowel).toEqual({ lengthMm: 198 });
    expect(stackPlan([tier(8, 110, 2500)], boards, true).dowel).toBeNull();
  });
});
