import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishedHeight } from '../../../src/compute/batter/finished-height.ts';
import { fillWarnings, rawFill } from '../../../src/compute/batter/raw-fill.ts';
import { yieldDensity } from '../../../src/compute/batter/yield-density.ts';
import { equalWeights, INCH, round, tin } from '../mixes/sample.ts';

const bakeOf = (acrossIn: number, batterG: number) => ({
  tins: [{ tin: round(acrossIn), count: 1 }],
  finishedHeightMm: 65,
  batterG,
});

describe('yield density', () => {
  it('of one bake is its batter over its volume', () => {
    const volumeMl = (2 * Math.PI * (3.5 * INCH) ** 2 * 65) / 1000;
    expect(yieldDensity(equalWeights)?.gPerMl).toBeCloseTo(1370 / volumeMl, 6);
    expect(yieldDensity(equalWeights)?.spread).toBe(0);
  });

  it('of two bakes is least squares through the origin, with their spread', () => {
    const [small, large] = [bakeOf(6, 500), bakeOf(10, 1480)];
    const found = yieldDensity({ provenBakes: [small, large] });
    const [v, w] = [6, 10].map((inches) => (Math.PI * ((inches / 2) * INCH) ** 2 * 65) / 1000) as [
      number,
      number,
    ];
    const expected = (500 * v + 1480 * w) / (v * v + w * w);
    expect(found?.gPerMl).toBeCloseTo(expected, 6);
    expect(found?.spread).toBeCloseTo(
      Math.max(Math.abs(500 / (expected * v) - 1), Math.abs(1480 / (expected * w) - 1)),
      4,
    );
  });

  it('is unknown without a proven bake', () => {
    expect(yieldDensity({ provenBakes: [] })).toBeNull();
  });

  it('lies between the densities of its bakes', () => {
    const bakes = fc.array(
      fc.record({ inches: fc.integer({ min: 4, max: 14 }), g: fc.integer({ min: 100, max: 4000 }) }),
      {
        minLength: 1,
        maxLength: 5,
      },
    );
    fc.assert(
      fc.property(bakes, (list) => {
        const found = yieldDensity({ provenBakes: list.map(({ inches, g }) => bakeOf(inches, g)) });
        const each = found?.bakes.map(({ gPerMl }) => gPerMl) ?? [];
        expect(found?.gPerMl).toBeGreaterThanOrEqual(Math.min(...each) - 2e-6);
        expect(found?.gPerMl).toBeLessThanOrEqual(Math.max(...each) + 2e-6);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('finished height', () => {
  const shallow = tin('tray', { kind: 'square', sideMm: 200 }, 40);

  it('is the recipe’s where the tin holds it', () => {
    expect(finishedHeight(equalWeights, round(6))).toMatchObject({
      value: { heightMm: 65, from: 'recipe', warnings: [] },
    });
  });

  it('is what the tin holds where it is too shallow, and says so', () => {
    const found = finishedHeight(equalWeights, shallow);
    expect(found).toMatchObject({
      value: { heightMm: 45, from: 'tin', warnings: [{ code: 'height-limited' }] },
    });
  });

  it('is refused only when it was asked for', () => {
    expect(finishedHeight(equalWeights, shallow, 45)).toMatchObject({ ok: true });
    expect(finishedHeight(equalWeights, shallow, 45.1)).toMatchObject({
      problems: [{ code: 'height-over-rim' }],
    });
    expect(finishedHeight(equalWeights, shallow, 0)).toMatchObject({
      problems: [{ code: 'height-not-positive' }],
    });
    expect(finishedHeight(equalWeights, shallow, Number.NaN)).toMatchObject({ ok: false });
  });
});

describe('raw fill', () => {
  it('of a straight tin is finished height × yield density ÷ raw density, and its limit that share of the depth', () => {
    const six = round(6);
    const fill = rawFill(six, 0.43 * ((Math.PI * (3 * INCH) ** 2 * 65) / 1000), 0.86, 0.43);
    expect(fill.rawFillMm).toBeCloseTo(32.5, 2);
    expect(fill.fillLimitMm).toBeCloseTo(38.1, 2);
    expect(fillWarnings(six, fill, 65)).toEqual([]);
  });

  it('warns past the fill limit, past the brim, and when very shallow', () => {
    const six = round(6);
    const filled = (heightMm: number, raw: number) =>
      fillWarnings(
        six,
        rawFill(six, 0.43 * ((Math.PI * (3 * INCH) ** 2 * heightMm) / 1000), raw, 0.43),
        heightMm,
      );
    expect(filled(80, 0.86)[0]?.code).toBe('fill-high');
    expect(filled(80, 0.43)[0]?.code).toBe('fill-over-brim');
    expect(filled(30, 0.86)[0]?.code).toBe('shallow-fill');
  });
});
