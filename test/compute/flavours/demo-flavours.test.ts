import { beforeAll, describe, expect, it } from 'vitest';
import { applyFlavours } from '../../../src/compute/flavours/apply.ts';
import { formulaInKitchen } from '../../../src/compute/flavours/formula-in-kitchen.ts';
import type { Content } from '../../../src/domain/content.ts';
import type { Flavour } from '../../../src/domain/flavour.ts';
import type { Formula, Recipe } from '../../../src/domain/recipe.ts';
import { readDemo } from '../../samples/demo.ts';

let content: Content;
beforeAll(async () => {
  const read = await readDemo();
  if (read.content === null) throw new Error('the demo content is wrong');
  content = read.content;
});

const recipe = (id: string): Recipe => {
  const found = content.recipes.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no recipe ${id}`);
  return found;
};
const flavour = (id: string): Flavour => {
  const found = content.flavours.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no flavour ${id}`);
  return found;
};
const total = (formula: Formula): number => formula.reduce((sum, { grams }) => sum + grams, 0);
const share = (formula: Formula, role: string): number =>
  formula.reduce((sum, line) => sum + (line.role === role ? line.grams : 0), 0) / total(formula);
const gramsOf = (formula: Formula, id: string): number =>
  formula.find(({ ingredientId }) => ingredientId === id)?.grams ?? 0;

const suited = (): [Flavour, Recipe][] =>
  content.flavours.flatMap((one) =>
    content.recipes
      .filter(({ id, method }) => one.suits.recipeIds.includes(id) || one.suits.methods.includes(method))
      .map((base): [Flavour, Recipe] => [one, base]),
  );

describe('the demo flavours', () => {
  it('are a dozen or more, each for a recipe that there is and with its reason', () => {
    expect(content.flavours.length).toBeGreaterThanOrEqual(12);
    for (const one of content.flavours) {
      expect(one.suits.recipeIds.length).toBeGreaterThan(0);
      expect(one.why.length).toBeGreaterThan(40);
    }
  });

  it('keep the mass on every recipe they suit, or grow it by what they add', () => {
    let pairs = 0;
    for (const [one, base] of suited()) {
      const { formula, growth } = applyFlavours(base, [one]);
      expect(growth).toBeCloseTo(total(formula) / total(base.formula), 9);
      if (one.batter === 'kept') expect(total(formula)).toBeCloseTo(total(base.formula), 6);
      else expect(growth).toBeGreaterThan(1);
      for (const line of formula) expect(line.grams).toBeGreaterThan(0);
      pairs += 1;
    }
    expect(pairs).toBeGreaterThan(25);
  });

  it('balance in every recipe they suit', () => {
    const warned = suited().flatMap(([one, base]) =>
      applyFlavours(base, [one]).warnings.map(({ code }) => `${one.id} on ${base.id}: ${code}`),
    );
    expect(warned).toEqual([]);
  });

  it('change the eggs or the balance of liquid in four cases or more', () => {
    const changed = content.flavours.filter((one) =>
      content.recipes
        .filter(({ id }) => one.suits.recipeIds.includes(id))
        .some((base) => {
          const { formula } = applyFlavours(base, [one]);
          const whole = gramsOf(base.formula, 'egg');
          const eggs = whole === 0 ? 0 : Math.abs(gramsOf(formula, 'egg') / whole - 1);
          const liquid = share(formula, 'liquid') - share(base.formula, 'liquid');
          return eggs > 0.06 || Math.abs(liquid) > 0.02;
        }),
    );
    expect(changed.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['banana', 'richer-yolk', 'cocoa', 'made-without-egg']),
    );
  });

  it('never promise what a kitchen cannot know', () => {
    for (const { name, summary, why, method = '' } of content.flavours) {
      expect(`${name} ${summary} ${why} ${method}`).not.toMatch(/vegan|-free|free from/i);
    }
  });
});

describe('applyFlavours(vanilla, [cocoa])', () => {
  it('takes 15 % of the flour, gives the cocoa its weight in milk and the powder back', () => {
    const { formula } = applyFlavours(recipe('vanilla-equal-weights'), [flavour('cocoa')]);
    // By hand: 200 g flour → 170 + 30 cocoa, 30 milk, 1.5 powder; 808.56 g + 31.5 g brought back to 808.56 g.
    const whole = total(recipe('vanilla-equal-weights').formula);
    const back = whole / (whole + 31.5);
    expect(gramsOf(formula, 'self-raising-flour')).toBeCloseTo(170 * back, 6);
    expect(gramsOf(formula, 'cocoa')).toBeCloseTo(30 * back, 6);
    expect(gramsOf(formula, 'milk')).toBeCloseTo(30 * back, 6);
    expect(gramsOf(formula, 'baking-powder')).toBeCloseTo(1.5 * back, 6);
  });

  it('is told when the milk is left out: the classic fault', () => {
    const [taken] = flavour('cocoa').adjustments;
    if (taken === undefined) throw new Error('no adjustment');
    const dry = { ...flavour('cocoa'), adjustments: [taken] };
    const { warnings } = applyFlavours(recipe('vanilla-equal-weights'), [dry]);
    expect(warnings.map(({ code }) => code)).toEqual(['cocoa-without-liquid']);
    expect(warnings[0]?.message).toMatch(/^Cocoa 30 g wants at least 23 g/);
  });
});

describe('orange and poppy seed together', () => {
  it('are orange first, then poppy seed on what that gave', () => {
    const base = recipe('vanilla-equal-weights');
    const both = applyFlavours(base, [flavour('orange'), flavour('poppy-seed')]);
    const first = applyFlavours(base, [flavour('orange')]);
    expect(both.flavourIds).toEqual(['orange', 'poppy-seed']);
    expect(both.warnings).toEqual([]);
    // Orange keeps the weight; seed is 30 g a kilogram of that, and its milk as much again.
    expect(gramsOf(both.formula, 'poppy-seed')).toBeCloseTo(total(base.formula) * 0.03, 6);
    expect(gramsOf(both.formula, 'milk')).toBeCloseTo(total(base.formula) * 0.03, 6);
    expect(both.growth).toBeCloseTo(1.06, 9);
    expect(gramsOf(both.formula, 'orange-zest')).toBeCloseTo(gramsOf(first.formula, 'orange-zest'), 9);
  });

  it('on a recipe nobody worked them out for say so once each', () => {
    const { warnings } = applyFlavours(recipe('harvest-fruit'), [flavour('orange'), flavour('poppy-seed')]);
    expect(warnings.map(({ code }) => code)).toEqual(['flavour-untried', 'flavour-untried']);
  });
});

describe('formulaInKitchen(recipe, flavours, setting)', () => {
  it('takes self-raising flour apart at altitude, cuts the powder, and says so', () => {
    const base = recipe('vanilla-equal-weights');
    const setting = { altitudeM: 1524, ingredients: content.ingredients };
    const { formula, flavourIds, warnings } = formulaInKitchen(base, [], setting);
    expect(flavourIds).toEqual([]);
    expect(gramsOf(formula, 'self-raising-flour')).toBe(0);
    expect(gramsOf(formula, 'plain-flour')).toBeCloseTo(200 / 1.05, 6);
    expect(gramsOf(formula, 'baking-powder')).toBeCloseTo((200 - 200 / 1.05) * (1 - 3 / 16), 6);
    expect(gramsOf(formula, 'caster-sugar')).toBeCloseTo(200 * (1 - 1 / 16), 6);
    expect(warnings).toEqual([
      {
        code: 'altitude-adjusted',
        message:
          'Adjusted for 1524 m above the sea: raising agents −19 %, sugar −6 %. Bake one small tin first.',
      },
    ]);
  });

  it('leaves recipes alone below 3,000 ft and where nobody names an altitude', () => {
    const base = recipe('vanilla-equal-weights');
    for (const altitudeM of [null, 0, 914]) {
      const { formula, warnings } = formulaInKitchen(base, [], {
        altitudeM,
        ingredients: content.ingredients,
      });
      expect(formula).toEqual(base.formula);
      expect(warnings).toEqual([]);
    }
  });
});
