import { describe, expect, it } from 'vitest';
import { eggLadder, ladderHeight } from '../../../src/compute/ladder/egg-ladder.ts';
import { equalWeights, kitchen, round } from '../mixes/sample.ts';

const input = { recipe: equalWeights, formula: equalWeights.formula, kitchen };

describe('the egg ladder', () => {
  it('has a rung for every egg to a dozen, or to all of the largest tin', () => {
    expect(eggLadder(input)?.map(({ eggs }) => eggs)).toEqual(Array.from({ length: 12 }, (_, at) => at + 1));
    const large = { ...kitchen, tins: [round(12, 2)] };
    expect(ladderHeight({ ...input, kitchen: large })).toBe(20);
    expect(ladderHeight({ ...input, kitchen: { ...kitchen, tins: [round(4)] } })).toBe(2);
  });

  it('gives at five eggs the formula as written', () => {
    const five = eggLadder(input)?.[4];
    expect(five?.lines.map(({ grams }) => grams)).toEqual([250, 250, 255.2, 250]);
    expect(five?.batterG).toBe(1005.2);
  });

  it('counts its eggs exactly, whatever the kitchen does beyond its tolerance', () => {
    for (const otherwise of ['step-up', 'weigh'] as const) {
      const strict = { ...kitchen, egg: { ...kitchen.egg, tolerance: 0, otherwise } };
      const rungs = eggLadder({ ...input, kitchen: strict, upTo: 30 }) ?? [];
      for (const { eggs, parts } of rungs) expect(parts.map(({ whole }) => whole)).toEqual([eggs]);
    }
  });

  it('is none for a recipe without eggs', () => {
    expect(
      eggLadder({ ...input, formula: equalWeights.formula.filter(({ eggPart }) => !eggPart) }),
    ).toBeNull();
  });
});
