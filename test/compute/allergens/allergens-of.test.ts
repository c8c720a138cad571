import { describe, expect, it } from 'vitest';
import { allergenChange, allergensOf } from '../../../src/compute/allergens/allergens-of.ts';
import type { Ingredient } from '../../../src/domain/ingredient.ts';

const item = (id: string, more: Partial<Ingredient> = {}): Ingredient => ({
  id,
  name: id,
  role: 'flour',
  fine: false,
  ...more,
});
const shelf: Ingredient[] = [
  item('flour', { allergens: ['gluten'], allergenNames: { gluten: 'wheat' } }),
  item('oats', { allergens: ['gluten'], allergenNames: { gluten: 'oats' } }),
  item('butter', { allergens: ['milk'] }),
  item('milk', { allergens: ['milk'] }),
  item('sugar', { allergens: [] }),
  item('sprinkles'),
];

describe('allergensOf(ingredients, shelf)', () => {
  it('is the union, in the order of the bowl, with what brings each in', () => {
    expect(allergensOf(['butter', 'sugar', 'flour', 'milk', 'butter'], shelf)).toEqual({
      contained: [
        { allergen: 'milk', name: null, ingredientIds: ['butter', 'milk'] },
        { allergen: 'gluten', name: 'wheat', ingredientIds: ['flour'] },
      ],
      unknownIds: [],
    });
  });

  it('says what nobody has filled in, and what is not on the shelf, instead of assuming none', () => {
    expect(allergensOf(['sprinkles', 'sugar', 'glitter'], shelf)).toEqual({
      contained: [],
      unknownIds: ['sprinkles', 'glitter'],
    });
  });

  it('keeps cereals apart that must be named', () => {
    const { contained } = allergensOf(['flour', 'oats'], shelf);
    expect(contained.map(({ name }) => name)).toEqual(['wheat', 'oats']);
  });
});

describe('allergenChange(before, after)', () => {
  it('tells what came in, what was left out and what is not known', () => {
    const before = allergensOf(['flour', 'butter'], shelf);
    const after = allergensOf(['oats', 'sugar', 'sprinkles'], shelf);
    const { added, leftOut, unknownIds } = allergenChange(before, after);
    expect(added.map(({ name }) => name)).toEqual(['oats']);
    expect(leftOut.map(({ allergen }) => allergen)).toEqual(['gluten', 'milk']);
    expect(unknownIds).toEqual(['sprinkles']);
  });
});
