import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { chartCombinations, chartInputs } from '../../src/views/chart-inputs.ts';
import { type FlavourView, flavourViews } from '../../src/views/flavour.ts';
import { tinChartView } from '../../src/views/tin-chart.ts';
import { readDemo } from '../samples/demo.ts';

let content: Content;
let views: FlavourView[];
beforeAll(async () => {
  const read = await readDemo();
  if (read.content === null) throw new Error('the demo content is wrong');
  content = read.content;
  views = flavourViews(content);
});
const view = (id: string): FlavourView => {
  const found = views.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no flavour ${id}`);
  return found;
};

describe('flavourViews(content)', () => {
  it('say each adjustment as a cook would', () => {
    expect(view('cocoa').steps).toEqual([
      'Take 15 % of the flour out and put as much cocoa powder in its place.',
      'Add whole milk, 100 % of the weight of the cocoa powder.',
      'Add baking powder, 5 % of the weight of the cocoa powder.',
    ]);
    expect(view('poppy-seed').steps[0]).toBe('Add poppy seed, 30 g to each kilogram of batter.');
    expect(view('made-without-wheat').steps[0]).toBe(
      'Count the self-raising flour as plain flour with 5 % of its weight in baking powder.',
    );
    expect(view('banana').steps[0]).toBe(
      'Take 15 % of the egg out and put mashed ripe banana in its place, 150 % of that weight.',
    );
  });

  it('show weights before and after whose changes add up to the change of the whole', () => {
    for (const { changes } of views) {
      expect(changes.length).toBeGreaterThan(0);
      for (const change of changes) {
        const sum = change.lines.reduce((total, line) => total + line.change.value, 0);
        expect(sum).toBeCloseTo(change.totalAfter.value - change.totalBefore.value, 1);
        expect(change.warnings).toEqual([]);
      }
    }
  });

  it('tell what happens to the eggs', () => {
    expect(view('richer-yolk').changes[0]?.eggsText).toBe(
      'Eggs: 2.77 eggs and 3.49 yolks for the formula as written, where the plain recipe has 4 eggs.',
    );
    expect(view('made-without-egg').changes[0]?.eggsText).toContain('none');
    expect(view('carrot-and-walnut').changes[0]?.eggsText).toBeNull();
  });

  it('tell which allergens come in, which are left out, and never that a cake is free from them', () => {
    expect(view('almond').changes[0]?.allergensAdded).toEqual(['almonds (nuts)']);
    const wheat = view('made-without-wheat').changes[0];
    expect(wheat?.allergensLeftOut).toEqual(['wheat (gluten)']);
    expect(wheat?.allergensAdded).toEqual(['almonds (nuts)']);
    expect(wheat?.cautions[0]?.code).toBe('made-without');
    expect(wheat?.cautions[0]?.text).toContain('in a kitchen that uses them');
    expect(view('orange').changes[0]?.allergenText).toContain('as far as they have been filled in');
    expect(JSON.stringify(views)).not.toMatch(/vegan|-free\b|free from/i);
  });

  it('say of an ingredient that nobody filled in that it is not known', () => {
    const ingredients = content.ingredients.map(({ allergens, ...rest }) =>
      rest.id === 'coffee-powder' || allergens === undefined ? rest : { ...rest, allergens },
    );
    const coffee = flavourViews({ ...content, ingredients }).find(({ id }) => id === 'coffee');
    expect(coffee?.changes[0]?.cautions.map(({ code }) => code)).toContain('allergens-unknown');
  });
});

describe('chartInputs(content)', () => {
  it('are every recipe plain and every flavour on the recipes it names', () => {
    const named = content.flavours.reduce((sum, { suits }) => sum + suits.recipeIds.length, 0);
    expect(chartInputs(content)).toHaveLength(content.recipes.length + named);
  });

  it('add the combinations that printables name, once', () => {
    const printables = [
      {
        print: 'tin-chart' as const,
        mass: 'g' as const,
        recipeIds: ['vanilla-equal-weights'],
        flavourIds: ['orange', 'poppy-seed'],
      },
      {
        print: 'recipe-card' as const,
        mass: 'g' as const,
        recipeIds: ['vanilla-equal-weights'],
        flavourIds: ['orange', 'poppy-seed'],
      },
      { print: 'tin-chart' as const, mass: 'g' as const, flavourIds: [] },
    ];
    const before = chartCombinations(content).length;
    const combinations = chartCombinations({ ...content, printables });
    expect(combinations).toHaveLength(before + 1);
    const ids = combinations.map(({ recipe, flavours }) =>
      [recipe.id, ...flavours.map(({ id }) => id)].join('--'),
    );
    expect(ids).toContain('vanilla-equal-weights--orange--poppy-seed');
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('carry the altitude to every chart under the recipe’s own name', () => {
    const inputs = chartInputs({ ...content, altitudeM: 1600 });
    for (const input of inputs.slice(0, 3)) {
      const chart = tinChartView({
        ...input,
        kitchen: { ...input.kitchen, tins: input.kitchen.tins.slice(0, 2) },
      });
      expect(chart.id).not.toContain('altitude');
      expect(chart.warnings.map(({ code }) => code)).toContain('altitude-adjusted');
    }
  });

  it('put the caution of what is left out on the chart', () => {
    const input = chartInputs(content).find(({ flavours }) =>
      flavours?.flavourIds.includes('made-without-egg'),
    );
    if (input === undefined) throw new Error('no such chart');
    const chart = tinChartView({
      ...input,
      kitchen: { ...input.kitchen, tins: input.kitchen.tins.slice(0, 2) },
    });
    expect(chart.cautions[0]?.code).toBe('made-without');
    expect(chart.rows.every(({ eggs }) => eggs === null)).toBe(true);
  });
});
