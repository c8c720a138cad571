import { describe, expect, it } from 'vitest';
import { planMix } from '../../src/compute/mixes/plan-mix.ts';
import type { Ingredient } from '../../src/domain/ingredient.ts';
import { chartViews } from '../../src/views/chart-views.ts';
import { mixJson } from '../../src/views/mix-json.ts';
import { recipeBakes } from '../../src/views/recipe-bakes.ts';
import { tinChartView } from '../../src/views/tin-chart.ts';
import { equalWeights, kitchen, line, round, tin } from '../compute/mixes/sample.ts';

const ingredients: Ingredient[] = [
  { id: 'butter', name: 'Butter', role: 'fat', fine: false, allergens: ['milk'] },
  { id: 'sugar', name: 'Sugar', role: 'sugar', fine: false, allergens: [] },
  {
    id: 'flour',
    name: 'Flour',
    role: 'flour',
    fine: false,
    allergens: ['gluten'],
    allergenNames: { gluten: 'wheat' },
  },
  { id: 'egg', name: 'Egg', role: 'egg', fine: false, eggPart: 'egg', allergens: ['eggs'] },
  { id: 'salt', name: 'Salt', role: 'flavouring', fine: true, teaspoonG: 6 },
];
const recipe = { ...equalWeights, formula: [...equalWeights.formula, line('salt', 3, { fine: true })] };
const input = { kitchen, recipe, ingredients };
const chart = tinChartView(input);

describe('a tin chart', () => {
  it('has a row for every owned tin, then one for all of a kind, smallest tin first', () => {
    expect(chart.rows.map(({ id }) => id)).toEqual([
      'round-4',
      'round-4-x2',
      'round-6',
      'round-6-x2',
      'round-7',
      'round-7-x2',
      'round-8',
      'round-8-x2',
      'round-10',
    ]);
    const unowned = { ...kitchen, tins: [...kitchen.tins, { ...round(5), owned: 0 }] };
    expect(tinChartView({ ...input, kitchen: unowned }).rows.length).toBe(chart.rows.length);
  });

  it('prints for the pair of six-inch tins what the mix says', () => {
    const row = chart.rows.find(({ id }) => id === 'round-6-x2');
    expect(row).toMatchObject({
      sizeText: 'round 6 × 3 in',
      otherSizeText: '(15.2 × 7.6 cm)',
      count: 2,
      eggs: { rule: 'nearest', text: 'Five eggs', whole: { value: 5, text: '5' } },
      surplusText: '1.7 g over',
      rawFill: { text: '32' },
      finishedHeight: { text: '65' },
    });
    expect(row?.amounts.map(({ figure, spoons }) => [figure.text, spoons])).toEqual([
      ['250', null],
      ['250', null],
      ['250', null],
      ['3', '½ tsp'],
    ]);
  });

  it('keeps eggs out of the columns, unless the kitchen weighs beaten egg', () => {
    expect(chart.columns.map(({ id }) => id)).toEqual(['butter', 'sugar', 'flour', 'salt']);
    const weighing = { ...kitchen, egg: { ...kitchen.egg, otherwise: 'weigh' as const } };
    const weighed = tinChartView({ ...input, kitchen: weighing });
    expect(weighed.columns.map(({ id }) => id)).toEqual(['butter', 'sugar', 'egg', 'flour', 'salt']);
    expect(weighed.rows[0]?.eggs?.text).toMatch(/^\d+ g beaten egg$/);
    expect(weighed.ladder?.columns.map(({ id }) => id)).toEqual(['butter', 'sugar', 'flour', 'salt']);
  });

  it('adds up: amounts and eggs are the batter, in every row and rung', () => {
    for (const row of chart.rows) {
      const total = row.amounts.reduce((sum, { figure }) => sum + figure.value, row.eggs?.grams.value ?? 0);
      expect(total).toBeCloseTo(row.batter.value, 3);
      const poured = row.count * row.receives.value;
      expect(poured).toBeLessThanOrEqual(row.batter.value + 0.002 * row.count);
      expect(row.count * row.batterEach.value + row.surplus.value).toBeCloseTo(row.batter.value, 3);
    }
    for (const rung of chart.ladder?.rungs ?? []) {
      const total = rung.amounts.reduce((sum, { figure }) => sum + figure.value, rung.eggs.value * 51.04);
      expect(total).toBeCloseTo(rung.batter.value, 3);
      for (const { used, left } of rung.fills)
        expect(used.value + left.value).toBeCloseTo(rung.batter.value, 3);
    }
  });

  it('prints the same weights wherever the eggs were rounded up to the same number', () => {
    const stepped = chart.rows.filter((row) => row.eggs?.rule === 'step-up');
    for (const row of stepped) {
      const twin = stepped.find((other) => other.eggs?.whole.value === row.eggs?.whole.value);
      expect(row.amounts).toEqual(twin?.amounts);
    }
    expect(stepped.length).toBeGreaterThan(2);
  });

  it('carries its cautions: allergens known and unknown, raw batter, hot tins, and when a cake is ready', () => {
    expect(chart.cautions.map(({ code }) => code)).toEqual([
      'allergens',
      'allergens-unknown',
      'raw-batter',
      'hot-tins',
      'ready',
    ]);
    expect(chart.cautions[0]?.text).toContain('milk, eggs and wheat (gluten)');
    expect(chart.cautions[1]?.text).toContain('salt');
  });

  it('says what it rests on and how to read it', () => {
    expect(chart.basisText).toBe(
      'Worked out from one proven bake: 1,370 g of batter in 2 × round 7 × 3 in, 65 mm (2½ in) high when baked.',
    );
    expect(chart.eggSizeText).toBe('UK medium eggs, 51 g each without the shell');
    expect(chart.notes.length).toBe(7);
  });

  it('has no ladder and no egg figures for a recipe without eggs, and nothing that is not a number', () => {
    const eggFree = { ...recipe, formula: recipe.formula.filter(({ eggPart }) => eggPart === undefined) };
    const without = tinChartView({ ...input, recipe: eggFree });
    expect(without.ladder).toBeNull();
    expect(without.rows.every((row) => row.eggs === null)).toBe(true);
    expect(JSON.stringify(without)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('names flavours in its id and title, and their warnings once', () => {
    const flavours = {
      flavourIds: ['lemon', 'poppy'],
      growth: 1.02,
      warnings: [{ code: 'flavour-untried', message: 'Try it small.' }],
      named: [
        { id: 'lemon', name: 'Lemon' },
        { id: 'poppy', name: 'Poppy seed' },
      ],
      formula: [...recipe.formula, line('zest', 20)],
    };
    const flavoured = tinChartView({ ...input, flavours });
    expect(flavoured.id).toBe('equal-weights--lemon--poppy');
    expect(flavoured.title).toBe('Equal-weights sponge, Lemon, Poppy seed');
    expect(flavoured.warnings.map(({ code }) => code)).toEqual(['flavour-untried']);
    expect(flavoured.rows.flatMap((row) => row.warnings)).not.toContainEqual(flavours.warnings[0]);
  });

  it('is plain data: it survives being written down and read back', () => {
    expect(JSON.parse(JSON.stringify(chart))).toEqual(chart);
    const [pair] = chartViews({ kitchen, ingredients, recipes: [recipe] });
    expect(JSON.parse(JSON.stringify(pair?.working()))).toEqual(pair?.working());
    expect(pair?.chart).toEqual(tinChartView({ ...input, bakes: recipeBakes(recipe, { kitchen }) }));
    expect(pair?.working().chartId).toBe(chart.id);
  });
});

describe('a mix as JSON', () => {
  const asks = [
    { tin: round(6, 2), count: 2 },
    { tin: tin('jug', { kind: 'measured', volumeMl: 900 }, 80), count: 1 },
  ];
  const json = (formula = recipe.formula) => {
    const mix = planMix({ recipe, formula, asks, kitchen });
    if (!mix.ok) throw new Error(JSON.stringify(mix.problems));
    return mixJson(mix.value, { finishedHeightMm: 65, egg: kitchen.egg });
  };

  it('has the contract’s keys, in its units', () => {
    const answer = json();
    expect(Object.keys(answer)).toEqual([
      'recipe',
      'flavours',
      'finished_height_mm',
      'egg_size',
      'tins',
      'mix',
      'loads',
      'warnings',
    ]);
    expect(answer.tins[1]).toMatchObject({
      tin: 'jug',
      plan_area_mm2: null,
      perimeter_mm: null,
      volume_ml: 900,
    });
    expect(answer.tins[0]?.plan_area_mm2).toBeCloseTo(18241.47, 2);
    expect(Object.keys(answer.mix)).toEqual(['batter_g', 'scale', 'eggs', 'ingredients', 'surplus_g']);
    expect(answer.flavours).toEqual([]);
    expect(answer.egg_size).toBe('UK medium');
  });

  it('conserves mass to the thousandth', () => {
    const { tins, mix, loads } = json();
    const asked = tins.reduce((sum, { count, batter_g_each }) => sum + count * batter_g_each, 0);
    expect(asked + mix.surplus_g).toBeCloseTo(mix.batter_g, 3);
    expect(mix.ingredients.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(mix.batter_g, 3);
    expect(loads.reduce((sum, load) => sum + load.batter_g, 0)).toBeCloseTo(mix.batter_g, 3);
  });

  it('has null counts and the rule none where there are no eggs', () => {
    const { mix } = json(recipe.formula.filter(({ eggPart }) => eggPart === undefined));
    expect(mix.eggs).toEqual({ exact: null, whole: null, rule: 'none', deviation: null });
  });

  it('tells yolks and whites apart', () => {
    const { mix } = json([...recipe.formula, line('yolk', 40, { role: 'egg', eggPart: 'yolk' })]);
    expect(mix.eggs.parts?.map(({ part }) => part)).toEqual(['egg', 'yolk']);
  });
});
