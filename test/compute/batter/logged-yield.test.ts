import { describe, expect, it } from 'vitest';
import { measuredFills, recipesWithLog } from '../../../src/compute/batter/logged-fills.ts';
import { yieldDensity } from '../../../src/compute/batter/yield-density.ts';
import { planMix } from '../../../src/compute/mixes/plan-mix.ts';
import type { BakeLogRow } from '../../../src/domain/bake-log.ts';
import type { LoggedFill, Recipe } from '../../../src/domain/recipe.ts';
import { equalWeights, INCH, kitchen, round } from '../mixes/sample.ts';

const row = (
  date: string,
  acrossIn: number,
  batterG: number,
  more: Partial<BakeLogRow> = {},
): BakeLogRow => ({
  date,
  recipeId: equalWeights.id,
  flavourIds: [],
  tin: round(acrossIn),
  count: 1,
  batterG,
  ovenC: 160,
  minutes: 55,
  core: 'none',
  band: false,
  finishedHeightMm: 65,
  ...more,
});

const proven: Recipe = {
  ...equalWeights,
  provenBakes: equalWeights.provenBakes.map((bake) => ({ ...bake, date: '2026-01-10' })),
};
const volumeMl = (acrossIn: number): number => (Math.PI * ((acrossIn / 2) * INCH) ** 2 * 65) / 1000;
const fill = (acrossIn: number, gPerMl: number): LoggedFill => ({
  date: '2026-05-01',
  tin: round(acrossIn),
  count: 1,
  finishedHeightMm: 65,
  batterG: gPerMl * volumeMl(acrossIn),
});
const EIGHTS = ['2026-02-01', '2026-03-01', '2026-04-01'].map((date) => row(date, 8, 930));

describe('bakes of the log that tell the yield', () => {
  it('are those of the plain recipe without a core, the height measured, and not proven ones over again', () => {
    const { finishedHeightMm: _, ...unmeasured } = row('2026-06-01', 8, 930);
    const rows = [
      ...EIGHTS,
      unmeasured,
      row('2026-06-02', 8, 930, { flavourIds: ['nut'] }),
      row('2026-06-03', 10, 1400, { core: 'hollow' }),
      row('2026-01-10', 7, 685),
      row('2026-06-04', 8, 930, { recipeId: 'another' }),
    ];
    expect(measuredFills(rows, proven).map(({ date }) => date)).toEqual(EIGHTS.map(({ date }) => date));
    expect(measuredFills([row('2026-01-10', 8, 900)], proven)).toHaveLength(1);
    expect(measuredFills([row('2026-06-01', 8, 450, { count: 2 })], proven)[0]?.batterG).toBe(900);
  });

  it('have no say before there are three of them', () => {
    expect(recipesWithLog([proven], EIGHTS.slice(0, 2))).toEqual([proven]);
    expect(recipesWithLog([proven], EIGHTS)[0]?.loggedFills).toHaveLength(3);
  });
});

describe('the yield density with a log', () => {
  it('joins them in the same sums, by hand: two 7 in at 1370 g and three 8 in at 3 % more', () => {
    const v = 2 * volumeMl(7);
    const w = volumeMl(8);
    const own = 1370 / v;
    const found = yieldDensity({
      ...proven,
      loggedFills: [8, 8, 8].map((inches) => fill(inches, own * 1.03)),
    });
    expect(found?.provenGPerMl).toBeCloseTo(own, 5);
    const weight = found?.logged[0]?.weight ?? 0;
    const joint = (own * v * v + 3 * weight * 1.03 * own * w * w) / (v * v + 3 * weight * w * w);
    expect(found?.gPerMl).toBeCloseTo(joint, 5);
    expect(weight).toBeGreaterThan(0.95);
    expect(found?.gPerMl).toBeGreaterThan(own);
    expect(found?.gPerMl).toBeLessThan(own * 1.03);
  });

  it('moves towards the log with every bake, and stays with the proven ones while there is no log', () => {
    const own = yieldDensity(proven)?.gPerMl ?? 0;
    const withLog = [3, 6, 12, 40].map(
      (count) =>
        yieldDensity({ ...proven, loggedFills: Array.from({ length: count }, () => fill(8, own * 1.04)) })
          ?.gPerMl ?? 0,
    );
    expect(yieldDensity(proven)?.logged).toEqual([]);
    let before = own;
    for (const after of withLog) {
      expect(after).toBeGreaterThan(before);
      expect(after).toBeLessThan(own * 1.04);
      before = after;
    }
  });

  it('lets a slip of the pen pull little: 1,900 g for 930', () => {
    const own = yieldDensity(proven)?.gPerMl ?? 0;
    const good = [fill(8, own), fill(8, own), fill(8, own)];
    const found = yieldDensity({ ...proven, loggedFills: [...good, fill(8, own * 2.04)] });
    expect(Math.abs((found?.gPerMl ?? 0) / own - 1)).toBeLessThan(0.02);
    expect(found?.logged[3]?.weight).toBeLessThan(0.05);
  });

  it('is what a mix is made by, and its batter still adds up', () => {
    const loggedFills = Array.from({ length: 6 }, () => fill(8, 0.45));
    const asked = { formula: proven.formula, asks: [{ tin: round(8), count: 2 }], kitchen };
    const plain = planMix({ recipe: proven, ...asked });
    const logged = planMix({ recipe: { ...proven, loggedFills }, ...asked });
    if (!plain.ok || !logged.ok) throw new Error('no mix');
    expect(logged.value.askedG / plain.value.askedG).toBeCloseTo(logged.value.gPerMl / plain.value.gPerMl, 4);
    expect(logged.value.askedG + logged.value.surplusG).toBeCloseTo(logged.value.batterG, 3);
  });
});
