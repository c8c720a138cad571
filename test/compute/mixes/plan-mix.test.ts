import { describe, expect, it } from 'vitest';
import { type Mix, type MixInput, planMix } from '../../../src/compute/mixes/plan-mix.ts';
import { bigBowl, equalWeights, kitchen, line, round, tin } from './sample.ts';

const ask = (more: Partial<MixInput> = {}): MixInput => ({
  recipe: equalWeights,
  formula: equalWeights.formula,
  asks: [{ tin: round(6, 2), count: 2 }],
  kitchen,
  ...more,
});

function made(input: MixInput): Mix {
  const mix = planMix(input);
  if (!mix.ok) throw new Error(JSON.stringify(mix.problems));
  return mix.value;
}

const codes = (mix: Mix): string[] => mix.warnings.map(({ code }) => code);

describe('a mix', () => {
  it('for the tins it was proven in is the proven batter', () => {
    expect(made(ask({ asks: [{ tin: round(7, 2), count: 2 }] })).askedG).toBeCloseTo(1370, 1);
  });

  it('for a pair of six-inch tins keeps equal weights equal', () => {
    const mix = made(ask());
    expect(mix.lines.map(({ grams }) => grams)).toEqual([250, 250, 255.2, 250]);
    expect(mix.eggs).toMatchObject({ rule: 'nearest', whole: 5 });
    expect(mix.surplusG).toBeCloseTo(1005.2 - mix.askedG, 3);
  });

  it('shares a shortfall over its tins by volume', () => {
    const mix = made(
      ask({
        asks: [
          { tin: round(6, 2), count: 2 },
          { tin: round(4), count: 1 },
        ],
        kitchen: { ...kitchen, egg: { ...kitchen.egg, tolerance: 0.2 } },
      }),
    );
    const short = made(
      ask({
        asks: [{ tin: round(8), count: 1 }],
        kitchen: { ...kitchen, egg: { ...kitchen.egg, tolerance: 0.2 } },
      }),
    );
    for (const each of [mix, short]) {
      const received = each.tins.map((one) => one.receivesG / one.finishedVolumeMl);
      for (const ratio of received) expect(ratio).toBeCloseTo(received[0] ?? 0, 5);
      const given = each.tins.reduce((sum, one) => sum + one.count * one.receivesG, 0);
      expect(given).toBeCloseTo(Math.min(each.batterG, each.askedG), 2);
    }
    expect(short.surplusG).toBeLessThan(0);
    expect(short.tins[0]?.receivesG).toBeLessThan(short.tins[0]?.batterGEach ?? 0);
  });

  it('makes eggs whole for each bowlful, and sums them', () => {
    const mix = made(
      ask({
        asks: [
          { tin: round(8, 2), count: 2 },
          { tin: round(10), count: 1 },
        ],
      }),
    );
    expect(mix.loads.length).toBe(2);
    expect(mix.eggs?.whole).toBe(mix.loads.reduce((sum, load) => sum + (load.eggs?.whole ?? 0), 0));
    expect(mix.batterG).toBeCloseTo(
      mix.loads.reduce((sum, load) => sum + load.batterG, 0),
      3,
    );
    expect(codes(mix)).toContain('several-loads');
  });

  it('splits a tin only when it alone exceeds the bowl', () => {
    const mix = made(ask({ asks: [{ tin: round(14), count: 1 }] }));
    expect(mix.loads.map(({ tins }) => tins.map(({ ofParts }) => ofParts))).toEqual([[2], [2]]);
    expect(mix.tins[0]?.receivesG).toBeCloseTo(Math.min(mix.batterG, mix.askedG), 2);
  });

  it('weighs beaten egg to the scale’s step where the kitchen prefers that', () => {
    const weigh = { ...kitchen, egg: { ...kitchen.egg, otherwise: 'weigh' as const } };
    const mix = made(ask({ asks: [{ tin: round(4), count: 1 }], kitchen: weigh }));
    expect(mix.eggs).toMatchObject({ rule: 'weigh', whole: 2 });
    expect(Math.abs(mix.surplusG)).toBeLessThan(5);
  });

  it('has no eggs where the formula has none', () => {
    const mix = made(ask({ formula: equalWeights.formula.filter(({ eggPart }) => !eggPart) }));
    expect(mix.eggs).toBeNull();
    expect(JSON.stringify(mix)).not.toMatch(/NaN|Infinity/);
  });

  it('gives every tin more where flavours add to the batter', () => {
    const plain = made(ask());
    const flavours = { flavourIds: ['nut'], growth: 1.1, warnings: [{ code: 'x', message: 'y' }] };
    const grown = made(ask({ flavours, formula: [...equalWeights.formula, line('nuts', 100.52)] }));
    expect(grown.askedG / plain.askedG).toBeCloseTo(1.1, 4);
    expect(grown.flavourIds).toEqual(['nut']);
    expect(codes(grown)).toContain('x');
  });

  it('warns of tins too shallow, of second bakes and of a bowl too large', () => {
    const tray = tin('tray', { kind: 'square', sideMm: 100 }, 40);
    const big = { ...kitchen, mixer: { bowlMl: 9000, maxFill: 0.5, minFill: 0.2 } };
    expect(codes(made(ask({ asks: [{ tin: tray, count: 2 }], kitchen: big })))).toEqual([
      'height-limited',
      'fill-high',
      'second-bake',
      'bowl-low',
    ]);
  });

  it('says when proven bakes disagree', () => {
    const bakes = [1370, 1700].map((batterG) => ({
      tins: [{ tin: round(7), count: 2 }],
      finishedHeightMm: 65,
      batterG,
    }));
    expect(codes(made(ask({ recipe: { ...equalWeights, provenBakes: bakes } })))).toContain('bakes-disagree');
  });

  it('names everything wrong at once', () => {
    const mix = planMix(
      ask({
        asks: [
          { tin: round(6), count: 0 },
          { tin: round(8), count: 1, heightMm: 200 },
        ],
      }),
    );
    expect(mix.ok ? [] : mix.problems.map(({ code }) => code)).toEqual(['tin-count', 'height-over-rim']);
    const empty = planMix(ask({ asks: [], formula: [], recipe: { ...equalWeights, provenBakes: [] } }));
    expect(empty.ok ? [] : empty.problems.map(({ code }) => code)).toEqual([
      'no-proven-bake',
      'formula-empty',
      'no-tins',
    ]);
  });

  it('answers the same in a bowl that takes anything as in one that just takes it', () => {
    expect(made(ask({ kitchen: bigBowl })).lines).toEqual(made(ask()).lines);
  });
});
