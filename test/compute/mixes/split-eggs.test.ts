import { describe, expect, it } from 'vitest';
import { splitByEggs } from '../../../src/compute/mixes/split-eggs.ts';
import type { Formula, FormulaLine } from '../../../src/domain/recipe.ts';

const line = (ingredientId: string, role: FormulaLine['role'], grams: number): FormulaLine => ({
  ingredientId,
  name: ingredientId,
  grams,
  role,
  fine: false,
});
/** One 50 g egg in every 200 g of batter. */
const formula: Formula = [line('flour', 'flour', 150), { ...line('egg', 'egg', 50), eggPart: 'egg' }];
const kitchen = {
  egg: { size: null, shelledG: 50, source: 'weighed', tolerance: 0.06, otherwise: 'step-up' },
  scale: { stepG: 5, fineStepG: 0.5 },
  mixer: { bowlMl: 4800, maxFill: 0.55, minFill: 0.12 },
  fairyCaseG: 25,
} as const;
const halves = (eachG: number): { tin: number; count: number; ofParts: number; askedG: number }[][] => [
  [{ tin: 0, count: 1, ofParts: 2, askedG: eachG }],
  [{ tin: 0, count: 1, ofParts: 2, askedG: eachG }],
];

describe('splitByEggs(loads, formula, kitchen, limitG)', () => {
  it('deals seven eggs as four and three, each part as large as its eggs', () => {
    const [first, second] = splitByEggs(halves(656), formula, kitchen, 900);
    expect(first?.[0]).toMatchObject({ parts: 4, ofParts: 7 });
    expect(second?.[0]).toMatchObject({ parts: 3, ofParts: 7 });
    expect(first?.[0]?.askedG).toBeCloseTo((1312 * 4) / 7, 3);
    expect((first?.[0]?.askedG ?? 0) + (second?.[0]?.askedG ?? 0)).toBeCloseTo(1312, 2);
  });

  it('leaves equal parts where the eggs divide, or the larger part would not fit the bowl', () => {
    expect(splitByEggs(halves(800), formula, kitchen, 900)).toEqual(halves(800));
    expect(splitByEggs(halves(656), formula, kitchen, 700)).toEqual(halves(656));
  });

  it('leaves loads that hold other tins as well', () => {
    const mixed = [[...(halves(656)[0] ?? []), { tin: 1, count: 1, askedG: 100 }], halves(656)[1] ?? []];
    expect(splitByEggs(mixed, formula, kitchen, 900)[0]).toEqual(mixed[0]);
  });
});
