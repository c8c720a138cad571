import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Mix, planMix, type TinAsk } from '../../../src/compute/mixes/plan-mix.ts';
import type { Kitchen } from '../../../src/domain/kitchen.ts';
import type { Formula } from '../../../src/domain/recipe.ts';
import type { Shape } from '../../../src/domain/shape.ts';
import { bigBowl, equalWeights, kitchen, line, tin } from './sample.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const shapes: fc.Arbitrary<Shape> = fc.oneof(
  mm(60, 400).map((acrossMm): Shape => ({ kind: 'round', acrossMm })),
  mm(60, 400).map((sideMm): Shape => ({ kind: 'square', sideMm })),
  fc.record({ lengthMm: mm(80, 400), widthMm: mm(60, 300) }).map(
    (sides): Shape => ({
      kind: 'loaf',
      ...sides,
      baseLengthMm: sides.lengthMm * 0.9,
      baseWidthMm: sides.widthMm * 0.85,
    }),
  ),
  mm(100, 300).map((acrossMm): Shape => ({ kind: 'ring', acrossMm, tubeMm: acrossMm / 4 })),
  mm(60, 300).map((acrossMm): Shape => ({ kind: 'heart', acrossMm, measured: 'across' })),
  mm(60, 300).map((acrossMm): Shape => ({ kind: 'dome', acrossMm })),
  mm(300, 4000).map((volumeMl): Shape => ({ kind: 'measured', volumeMl })),
);
const asks: fc.Arbitrary<TinAsk[]> = fc.array(
  fc
    .record({ shape: shapes, depthMm: mm(30, 120), count: fc.integer({ min: 1, max: 3 }) })
    .map(({ shape, depthMm, count }) => ({ tin: tin('tin', shape, depthMm, 3), count })),
  { minLength: 1, maxLength: 4 },
);
const formulas: fc.Arbitrary<Formula> = fc
  .record({
    weighed: fc.array(mm(20, 600), { minLength: 1, maxLength: 6 }),
    fine: mm(0.5, 20),
    egg: fc.option(mm(20, 600), { nil: null }),
    yolk: fc.option(mm(20, 200), { nil: null }),
  })
  .map(({ weighed, fine, egg, yolk }) => [
    ...weighed.map((grams, at) => line(`w${at}`, grams)),
    line('powder', fine, { fine: true }),
    ...(egg === null ? [] : [line('egg', egg, { role: 'egg', eggPart: 'egg' })]),
    ...(yolk === null ? [] : [line('yolk', yolk, { role: 'egg', eggPart: 'yolk' })]),
  ]);
const kitchens: fc.Arbitrary<Kitchen> = fc
  .record({ bowlMl: mm(1500, 9000), tolerance: mm(0, 0.15), weigh: fc.boolean(), shelledG: mm(38, 70) })
  .map(({ bowlMl, tolerance, weigh, shelledG }) => ({
    ...kitchen,
    mixer: { bowlMl, maxFill: 0.55, minFill: 0.1 },
    egg: { ...kitchen.egg, tolerance, shelledG, otherwise: weigh ? 'weigh' : 'step-up' },
  }));

function made(tins: TinAsk[], formula: Formula = equalWeights.formula, where: Kitchen = bigBowl): Mix {
  const mix = planMix({ recipe: equalWeights, formula, asks: tins, kitchen: where });
  if (!mix.ok) throw new Error(JSON.stringify(mix.problems));
  return mix.value;
}

const total = (masses: number[]): number => masses.reduce((sum, g) => sum + g, 0);
const QUANTUM_G = 0.0005;

describe('mass', () => {
  it('is conserved from tins to loads to the last rounded gram', () => {
    fc.assert(
      fc.property(asks, formulas, kitchens, (tins, formula, where) => {
        const mix = made(tins, formula, where);
        const asked = total(mix.tins.map(({ count, batterGEach }) => count * batterGEach));
        const rounded = total(mix.lines.map(({ grams }) => grams));
        expect(Math.abs(asked + mix.surplusG - rounded)).toBeLessThan(0.001);
        expect(Math.abs(rounded - mix.batterG)).toBeLessThan(0.001);
        expect(Math.abs(total(mix.loads.map(({ batterG }) => batterG)) - mix.batterG)).toBeLessThan(0.001);
        const inLoads = total(mix.loads.flatMap((load) => load.tins.map(({ askedG }) => askedG)));
        expect(Math.abs(inLoads - asked)).toBeLessThan(0.001);
      }),
      { numRuns: 1000 },
    );
  });

  it('of every weighed ingredient follows the formula to within 2 %', () => {
    fc.assert(
      fc.property(asks, formulas, kitchens, (tins, formula, where) => {
        const wrong: string[] = [];
        for (const load of made(tins, formula, where).loads) {
          for (const { ingredientId, grams, stepG, exactG } of load.lines) {
            if (stepG === null) continue;
            const written = formula.find((each) => each.ingredientId === ingredientId)?.grams ?? 0;
            const wanted =
              ((written * load.askedG) / total(formula.map((each) => each.grams))) * (load.eggs?.factor ?? 1);
            const isExact = Math.abs(exactG - wanted) <= QUANTUM_G + 5e-5 * wanted;
            const isNear = wanted < 0.03 || Math.abs(grams - wanted) <= 0.0201 * wanted + QUANTUM_G;
            if (!isExact || !isNear) wrong.push(`${ingredientId}: ${exactG}, ${grams} g against ${wanted} g`);
          }
        }
        expect(wrong).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });

  it('falls short by no more than the kitchen’s tolerance of its eggs and the rounding of its weights', () => {
    fc.assert(
      fc.property(asks, fc.constant(equalWeights.formula), kitchens, (tins, formula, where) => {
        for (const load of made(tins, formula, where).loads) {
          const eggG = load.askedG * (255.2 / 1005.2);
          const rounding = total(load.lines.map(({ stepG }) => stepG ?? 0));
          expect(load.surplusG).toBeGreaterThanOrEqual(-where.egg.tolerance * eggG - rounding - 0.01);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('numbers', () => {
  it('are never missing, endless or below nothing, the surplus apart', () => {
    const wrongIn = (value: unknown, key: string): string[] => {
      if (typeof value === 'number') {
        const isFit = Number.isFinite(value) && (value >= 0 || /surplus|deviation|residual/.test(key));
        return isFit ? [] : [`${key}: ${value}`];
      }
      if (value === null || typeof value !== 'object') return [];
      return Object.entries(value).flatMap(([name, inner]) => wrongIn(inner, name));
    };
    fc.assert(
      fc.property(asks, formulas, kitchens, (tins, formula, where) => {
        const { tins: _, ...mix } = made(tins, formula, where);
        expect(wrongIn(mix, 'mix')).toEqual([]);
        expect(_.flatMap(({ tin: __, ...figures }) => wrongIn(figures, 'tin'))).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('batter before egg rounding, and whole eggs, never fall', () => {
  const wider = (shape: Shape, by: number): Shape => {
    switch (shape.kind) {
      case 'round':
      case 'heart':
      case 'ring':
      case 'dome':
        return { ...shape, acrossMm: shape.acrossMm * by };
      case 'square':
        return { ...shape, sideMm: shape.sideMm * by };
      case 'loaf':
        return { ...shape, lengthMm: shape.lengthMm * by };
      case 'measured':
        return { ...shape, volumeMl: shape.volumeMl * by };
      default:
        return shape;
    }
  };
  const rises = (less: Mix, more: Mix): void => {
    expect(more.askedG).toBeGreaterThanOrEqual(less.askedG);
    expect(more.eggs?.whole).toBeGreaterThanOrEqual(less.eggs?.whole ?? Number.NaN);
  };

  it('with a wider tin', () => {
    fc.assert(
      fc.property(asks, mm(1, 1.5), (tins, by) => {
        const widened = tins.map((one, at) =>
          at === 0 ? { ...one, tin: { ...one.tin, shape: wider(one.tin.shape, by) } } : one,
        );
        // A dome of the same depth grows wider but not always fuller to a given height: it is left as it is.
        if (tins[0]?.tin.shape.kind !== 'dome') rises(made(tins), made(widened));
      }),
      { numRuns: 1000 },
    );
  });

  it('with a taller cake', () => {
    fc.assert(
      fc.property(asks, mm(5, 30), mm(0, 5), (tins, heightMm, more) => {
        const at = (height: number) => made(tins.map((one) => ({ ...one, heightMm: height })));
        rises(at(heightMm), at(heightMm + more));
      }),
      { numRuns: 1000 },
    );
  });

  it('with more tins', () => {
    fc.assert(
      fc.property(asks, (tins) => {
        const more = tins.map((one, at) => (at === 0 ? { ...one, count: one.count + 1 } : one));
        rises(made(tins), made(more));
      }),
      { numRuns: 1000 },
    );
  });

  it('and twice the tins ask for twice the batter', () => {
    fc.assert(
      fc.property(asks, (tins) => {
        const twice = made(tins.map((one) => ({ ...one, count: one.count * 2 })));
        expect(twice.askedG).toBeCloseTo(2 * made(tins).askedG, 2);
      }),
      { numRuns: 1000 },
    );
  });

  it('and a measured tin of twice the volume asks for twice the batter', () => {
    fc.assert(
      fc.property(mm(300, 4000), mm(70, 120), (volumeMl, depthMm) => {
        const of = (ml: number) =>
          made([{ tin: tin('m', { kind: 'measured', volumeMl: ml }, depthMm), count: 1 }]).askedG;
        expect(Math.abs(of(2 * volumeMl) - 2 * of(volumeMl))).toBeLessThan(0.003);
      }),
      { numRuns: 1000 },
    );
  });
});
