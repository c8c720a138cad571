import { describe, expect, it } from 'vitest';
import {
  BAKE_CONSTANTS,
  COMPONENTS,
  compositionBelief,
  makeUp,
  PLAIN_SPONGE,
  priorBelief,
  RECIPE_CLASSES,
  thermalProperties,
} from '../../../src/compute/bake/index.ts';
import type { Ingredient } from '../../../src/domain/ingredient.ts';
import { line } from '../mixes/sample.ts';

const shelf = (id: string, more: Partial<Ingredient> = {}): Ingredient => ({
  id,
  name: id,
  role: 'flour',
  fine: false,
  ...more,
});
const SPONGE = [
  line('butter', 200, { role: 'fat' }),
  line('sugar', 200, { role: 'sugar' }),
  line('egg', 200, { role: 'egg', eggPart: 'egg' }),
  line('flour', 200),
];
const SHELF = [shelf('butter', { role: 'fat', waterShare: 0.16 })];
const sum = (shares: Record<string, number>): number =>
  Object.values(shares).reduce((all, one) => all + one, 0);

describe('the make-up of a batter', () => {
  it('of equal weights is the plain sponge’s, by hand: water (16 + 0 + 76 + 14) ÷ 4 = 26.5 %', () => {
    const { shares, timeFactor } = makeUp(SPONGE, SHELF);
    expect(shares.water).toBeCloseTo(0.265, 6);
    // Butter 84 %, egg 40 % of 24 %, flour 2 % of 86 %: (0.84 + 0.096 + 0.0172) ÷ 4.
    expect(shares.fat).toBeCloseTo(0.2383, 4);
    expect(Math.abs(timeFactor - 1)).toBeLessThan(0.005);
    for (const component of COMPONENTS)
      expect(Math.abs(shares[component] - PLAIN_SPONGE[component])).toBeLessThan(0.004);
  });

  it('always adds up to the whole, whatever a packet leaves out', () => {
    const packet = {
      fatG: 81,
      saturatesG: 52,
      carbohydrateG: 0.6,
      sugarsG: 0.6,
      polyolsG: 0,
      fibreG: 0,
      proteinG: 0.6,
      saltG: 1.5,
      alcoholG: 0,
    };
    const overfull = { ...packet, fatG: 99, carbohydrateG: 2 };
    for (const nutrients of [packet, overfull]) {
      const { shares, lines } = makeUp(SPONGE, [shelf('butter', { role: 'fat', nutrients })]);
      expect(Math.abs(sum({ ...shares }) - 1)).toBeLessThan(1e-5);
      expect(lines.map(({ from }) => from)).toEqual(['packet', 'role', 'role', 'role']);
      for (const component of COMPONENTS) expect(shares[component]).toBeGreaterThanOrEqual(0);
    }
    const { lines } = makeUp(SPONGE, [shelf('butter', { role: 'fat', nutrients: packet })]);
    expect(lines[0]?.shares.water).toBeCloseTo(1 - 0.837, 6);
  });

  it('of a wetter batter lets heat through faster, so that it takes less time', () => {
    const wet = makeUp([...SPONGE, line('milk', 200, { role: 'liquid' })], SHELF);
    const diffusivity = (shares: typeof PLAIN_SPONGE): number =>
      thermalProperties(shares, 60).diffusivityM2PerS;
    expect(diffusivity(wet.shares)).toBeGreaterThan(diffusivity(PLAIN_SPONGE));
    expect(wet.timeFactor).toBeLessThan(1);
    expect(wet.timeFactor).toBeGreaterThan(0.8);
  });

  it('refuses a formula that weighs nothing', () => {
    expect(() => makeUp([], [])).toThrow(RangeError);
  });
});

describe('starting from the make-up', () => {
  it('takes its factor, and doubts it the more, the further it is from what the kind of cake says', () => {
    const start = (factor: number) =>
      compositionBelief(RECIPE_CLASSES['dense chocolate'], factor, BAKE_CONSTANTS);
    const own = priorBelief(RECIPE_CLASSES['dense chocolate'], BAKE_CONSTANTS);
    expect(Math.exp(start(0.93).lnFactor)).toBeCloseTo(0.93, 9);
    expect(start(1.65).varLnFactor).toBeCloseTo(own.varLnFactor, 9);
    expect(start(0.93).varLnFactor).toBeGreaterThan(start(1.3).varLnFactor);
    // The kind's own factor stays within the nine in ten.
    const reach = 1.645 * Math.sqrt(start(0.93).varLnFactor);
    expect(start(0.93).lnFactor + reach).toBeGreaterThan(Math.log(1.65));
  });
});
