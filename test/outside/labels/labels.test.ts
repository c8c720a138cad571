/** Allergens, their names, emphasis, type and energy factors against what the law says, row by row. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { CEREALS, namesIn, NUTS, singular } from '../../../src/compute/labels/allergen-words.ts';
import { labelOf } from '../../../src/compute/labels/label.ts';
import { leastXHeightMm, ruleSet } from '../../../src/compute/labels/rule-set.ts';
import { ENERGY_FACTORS } from '../../../src/compute/nutrition/energy.ts';
import { ALLERGENS, type Allergen } from '../../../src/domain/ingredient.ts';
import { labelOutcome } from '../../../src/views/label.ts';
import { labelInput } from '../../samples/label-input.ts';

const folder = new URL('.', import.meta.url);
const rowsOf = (file: string): Record<string, string>[] =>
  parse(readFileSync(new URL(file, folder), 'utf8'), { columns: true });
const rules = rowsOf('labelling-rules.csv');
const rule = (start: string): Record<string, string> => {
  const found = rules.find((row) => row.rule?.startsWith(start));
  if (found === undefined) throw new Error(`no rule '${start}'`);
  return found;
};

/** What the lists call each of ours. */
const CALLED: Record<string, Allergen> = {
  'cereals containing gluten': 'gluten',
  wheat: 'gluten',
  soybeans: 'soya',
  'tree nuts': 'nuts',
  'sesame seeds': 'sesame',
  'sulphur dioxide and sulphites': 'sulphites',
  'crustacean shellfish': 'crustaceans',
};
const listed = (scheme: string): string[] =>
  rowsOf('allergens.csv')
    .filter((row) => row.scheme === scheme)
    .map(({ allergen = '' }) => CALLED[allergen] ?? allergen)
    .sort();

describe('the allergens of the law', () => {
  it('are fourteen in the EU and the UK', () => {
    expect(listed('EU/UK')).toEqual([...ALLERGENS].sort());
    expect(listed('EU/UK')).toEqual([...ruleSet('EU').emphasised].sort());
    expect(listed('EU/UK')).toEqual([...ruleSet('UK').emphasised].sort());
  });

  it('are nine in the US', () => {
    expect(listed('US')).toEqual([...ruleSet('US').emphasised].sort());
    expect(listed('US')).toHaveLength(9);
  });

  it('name every cereal and every nut of Annex II', () => {
    const note = (allergen: string): string =>
      rowsOf('allergens.csv').find((row) => row.scheme === 'EU/UK' && row.allergen === allergen)?.note ?? '';
    const has = (text: string, names: readonly string[]): void => {
      for (const name of names) expect(text).toContain(name.replace(/ (wheat|nuts)$/, ''));
    };
    has(note('cereals containing gluten'), CEREALS);
    has(note('nuts'), NUTS);
    for (const word of ['wheat', 'spelt', 'khorasan', 'rye', 'barley', 'oats'])
      expect(CEREALS.some((name) => name.startsWith(word))).toBe(true);
    for (const word of ['almonds', 'hazelnuts', 'walnuts', 'cashews', 'pecans', 'Brazil nuts', 'pistachios', 'macadamia'])
      expect(NUTS.some((name) => name.startsWith(word))).toBe(true);
    expect(namesIn('wheat, barley and oats').map(singular)).toEqual(['wheat', 'barley', 'oat']);
  });
});

describe('energy factors', () => {
  it.each([
    ['carbohydrate', 'carbohydrate (except'],
    ['protein', 'protein'],
    ['fat', 'fat'],
    ['fibre', 'fibre'],
    ['alcohol', 'alcohol'],
    ['polyols', 'polyols'],
  ] as const)('of %s', (nutrient, row) => {
    const [kj, kcal] = (rule(`energy factor: ${row}`).value ?? '').split(';').map((text) => Number.parseFloat(text));
    expect(ENERGY_FACTORS[nutrient]).toEqual({ kjPerG: kj, kcalPerG: kcal });
  });
});

describe('what a label looks like', () => {
  const view = () => {
    const { view: made } = labelOutcome(labelInput(), { name: 'K', edition: '2026-11-01', locale: 'en-GB' });
    if (made === null) throw new Error('refused');
    return made;
  };

  it('heads the list with the word ingredients', () => {
    expect(rule("heading of the ingredient list includes the word 'ingredients'").seen).toBe('seen');
    expect(view().lines[0]?.lead.toLowerCase()).toContain('ingredients');
  });

  it('lists by falling weight', () => {
    expect(rule('order of ingredients').seen).toBe('seen');
    const bowl = view().ingredients.map((one) => one.bowl.value);
    expect(bowl).toEqual([...bowl].sort((a, b) => b - a));
  });

  it('emphasises allergens, in bold and in capitals, and nothing else in the list', () => {
    expect(rule('allergen names emphasised').seen).toBe('seen');
    const runs = view().lines[0]?.runs ?? [];
    const strong = runs.filter((run) => run.strong).map(({ text }) => text);
    expect(strong).toEqual(['MILK', 'WHEAT', 'EGG']);
    for (const run of runs.filter((one) => !one.strong)) expect(run.text).toBe(run.text.toLowerCase());
  });

  it('keeps its x as high as the law asks: 1.2 mm, or 0.9 mm where the largest side is under 80 cm²', () => {
    const [large, small] = [...(rule('minimum x-height').value ?? '').matchAll(/([\d.]+) mm/g)].map(([, mm]) => Number(mm));
    for (const country of ['UK', 'EU'] as const) {
      expect(leastXHeightMm(country, undefined)).toBe(large);
      expect(leastXHeightMm(country, 80)).toBe(large);
      expect(leastXHeightMm(country, 79.9)).toBe(small);
    }
  });

  it('for direct sale needs the name and the full list with its allergens', () => {
    expect(rule('prepacked for direct sale').rule).toContain('full ingredient list');
    expect(ruleSet('UK').needs['prepacked for direct sale']).toEqual(['name', 'ingredients', 'allergens']);
  });

  it('tells a percentage against the finished weight', () => {
    expect(rule('quantity of an ingredient named').rule).toContain('mixing-bowl weight over finished weight');
    const label = labelOf(labelInput({ named: ['butter'] }));
    expect(label.ok && label.value.entries.find(({ name }) => name === 'butter')?.quid).toBeCloseTo(400 / 1450, 6);
  });
});
