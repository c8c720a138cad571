import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyFlavours } from '../../../src/compute/flavours/apply.ts';
import type { Adjustment, Flavour } from '../../../src/domain/flavour.ts';
import type { Formula, FormulaLine, Recipe } from '../../../src/domain/recipe.ts';

const line = (ingredientId: string, role: FormulaLine['role'], grams: number): FormulaLine => ({
  ingredientId,
  name: ingredientId,
  grams,
  role,
  fine: role === 'raising',
});
const equalWeights: Formula = [
  line('butter', 'fat', 250),
  line('caster-sugar', 'sugar', 250),
  { ...line('egg', 'egg', 250), eggPart: 'egg' },
  line('self-raising-flour', 'flour', 250),
];
const sponge: Recipe = {
  id: 'sponge',
  name: 'Sponge',
  summary: '',
  method: 'creamed',
  formula: equalWeights,
  eggSize: { scheme: 'US', grade: 'large' },
  provenBakes: [],
  finishedHeightMm: 65,
  allowedRiseMm: 0,
  rawDensityGPerMl: 0.85,
  rawDensitySource: 'method',
  ovenC: 160,
  methodMarkdown: '',
  layers: 2,
};
const cocoa = { ingredientId: 'cocoa', name: 'cocoa', role: 'flour', fine: false, drinks: 0.75 } as const;
const milk = { ingredientId: 'milk', name: 'milk', role: 'liquid', fine: false } as const;
const powder = { ingredientId: 'baking-powder', name: 'powder', role: 'raising', fine: true } as const;
const flavour = (adjustments: Adjustment[], batter: Flavour['batter'] = 'kept'): Flavour => ({
  id: 'f',
  name: 'F',
  summary: '',
  suits: { recipeIds: ['sponge'], methods: [] },
  why: '',
  batter,
  adjustments,
});
const cocoaFlavour = flavour([
  { kind: 'replace', basis: { role: 'flour' }, share: 0.15, entry: cocoa, portion: 1 },
  { kind: 'add', basis: { ingredientId: 'cocoa' }, share: 1, entry: milk },
  { kind: 'add', basis: { ingredientId: 'cocoa' }, share: 0.05, entry: powder },
]);
const gramsOf = (formula: Formula, id: string): number =>
  formula.find((l) => l.ingredientId === id)?.grams ?? 0;
const total = (formula: Formula): number => formula.reduce((s, l) => s + l.grams, 0);

describe('applyFlavours(recipe, flavours)', () => {
  it('follows the cocoa example worked by hand', () => {
    // Worked by hand with invented figures: 4 × 250 g, 15 % of the flour as cocoa, milk 100 % of the cocoa,
    // powder 5 % of the flour replaced; 1 039.375 g brought back to 1 000 g.
    const { formula, growth, warnings } = applyFlavours(sponge, [cocoaFlavour]);
    expect(growth).toBeCloseTo(1, 12);
    expect(gramsOf(formula, 'self-raising-flour')).toBeCloseTo(204.45, 2);
    expect(gramsOf(formula, 'cocoa')).toBeCloseTo(36.08, 2);
    expect(gramsOf(formula, 'butter')).toBeCloseTo(240.53, 2);
    expect(gramsOf(formula, 'milk')).toBeCloseTo(36.08, 2);
    expect(gramsOf(formula, 'baking-powder')).toBeCloseTo(1.8, 2);
    expect(gramsOf(formula, 'egg') / 50).toBeCloseTo(4.81, 2);
    expect(warnings).toEqual([]);
  });

  it('names cocoa without liquid, with the numbers', () => {
    const dry = flavour([
      { kind: 'replace', basis: { role: 'flour' }, share: 0.2, entry: cocoa, portion: 1 },
    ]);
    const [warning] = applyFlavours(sponge, [dry]).warnings;
    expect(warning?.code).toBe('cocoa-without-liquid');
    expect(warning?.message).toContain('50 g');
  });

  it('names fat over eggs, sugar over flour and a batter too wet', () => {
    const broken = flavour(
      [
        { kind: 'multiply', basis: { role: 'fat' }, by: 1.4 },
        { kind: 'multiply', basis: { role: 'sugar' }, by: 1.3 },
        { kind: 'add', basis: { role: 'flour' }, share: 0.5, entry: milk },
      ],
      'grows',
    );
    const codes = applyFlavours(sponge, [broken]).warnings.map((w) => w.code);
    expect(codes).toEqual(['sugar-over-flour', 'fat-over-eggs', 'liquid-off-flour']);
  });

  it('says when a flavour was not worked out for the recipe', () => {
    const other = { ...cocoaFlavour, suits: { recipeIds: ['other'], methods: [] } };
    expect(applyFlavours(sponge, [other]).warnings.map((w) => w.code)).toEqual(['flavour-untried']);
  });

  it('swaps self-raising flour for plain and powder without changing the weight', () => {
    const split: Adjustment = {
      kind: 'split-self-raising',
      ingredientId: 'self-raising-flour',
      flour: { ingredientId: 'plain-flour', name: 'plain', role: 'flour', fine: false },
      powder,
      powderShare: 0.05,
    };
    const { formula } = applyFlavours(sponge, [flavour([split])]);
    expect(gramsOf(formula, 'plain-flour')).toBeCloseTo(250 / 1.05, 9);
    expect(gramsOf(formula, 'baking-powder')).toBeCloseTo(250 - 250 / 1.05, 9);
  });

  it('drops a line whose whole weight is replaced', () => {
    const swap: Adjustment = {
      kind: 'replace',
      basis: { ingredientId: 'butter' },
      share: 1,
      entry: { ingredientId: 'plant-block', name: 'plant block', role: 'fat', fine: false },
      portion: 1,
    };
    const { formula } = applyFlavours(sponge, [flavour([swap])]);
    expect(formula.map((l) => l.ingredientId)).toContain('plant-block');
    expect(formula.map((l) => l.ingredientId)).not.toContain('butter');
  });

  it('keeps the weight when told so, and scales with the formula whatever its size', () => {
    const share = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.1, max: 50, noNaN: true }), (a, b, size) => {
        const adjustments: Adjustment[] = [
          { kind: 'replace', basis: { role: 'flour' }, share: a, entry: cocoa, portion: 1 },
          { kind: 'add', basis: { whole: 'batter' }, share: b, entry: milk },
        ];
        const big = { ...sponge, formula: equalWeights.map((l) => ({ ...l, grams: l.grams * size })) };
        const small = applyFlavours(sponge, [flavour(adjustments)]);
        const large = applyFlavours(big, [flavour(adjustments)]);
        expect(total(small.formula)).toBeCloseTo(1000, 6);
        for (const l of small.formula) {
          expect(gramsOf(large.formula, l.ingredientId)).toBeCloseTo(l.grams * size, 6);
        }
        const grown = applyFlavours(sponge, [flavour(adjustments, 'grows')]);
        expect(grown.growth).toBeCloseTo(1 + b, 9);
      }),
      { numRuns: 1000 },
    );
  });

  it('composes in order: the second flavour is measured against what the first one made', () => {
    const zest = flavour([
      {
        kind: 'add',
        basis: { ingredientId: 'cocoa' },
        share: 0.1,
        entry: { ingredientId: 'zest', name: 'zest', role: 'flavouring', fine: true },
      },
    ]);
    expect(gramsOf(applyFlavours(sponge, [cocoaFlavour, zest]).formula, 'zest')).toBeGreaterThan(3);
    expect(gramsOf(applyFlavours(sponge, [zest, cocoaFlavour]).formula, 'zest')).toBe(0);
  });
});
