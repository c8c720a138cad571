import { describe, expect, it } from 'vitest';
import { energyOf } from '../../../src/compute/nutrition/energy.ts';
import { NO_NUTRIENTS, nutritionOf } from '../../../src/compute/nutrition/nutrition.ts';
import { shelfItem } from '../../samples/label-input.ts';

const butter = shelfItem('butter', {
  nutrients: { ...NO_NUTRIENTS, fatG: 82, saturatesG: 52, proteinG: 0.6, saltG: 0.1 },
});
const sugar = shelfItem('sugar', { nutrients: { ...NO_NUTRIENTS, carbohydrateG: 100, sugarsG: 100 } });
const bowl = [
  { ingredientId: 'butter', grams: 100 },
  { ingredientId: 'sugar', grams: 100 },
];

describe('nutrition', () => {
  it('is in 100 g of what is left after baking', () => {
    const { nutrition } = nutritionOf({
      weighedIn: bowl,
      ingredients: [butter, sugar],
      finishedG: 160,
      portions: 4,
    });
    // By hand: 82 g fat in 160 g is 51.25 g in 100 g; 100 g sugar is 62.5 g; protein 0.375 g.
    expect(nutrition?.per100G).toMatchObject({
      fatG: 51.25,
      saturatesG: 32.5,
      carbohydrateG: 62.5,
      sugarsG: 62.5,
      proteinG: 0.375,
    });
    // 51.25 × 37 + 62.5 × 17 + 0.375 × 17 = 2,965.125 kJ; × 9, 4, 4 = 712.75 kcal.
    expect(nutrition?.per100G.energy).toEqual({ kj: 2965.125, kcal: 712.75 });
    expect(nutrition?.portionG).toBe(40);
    expect(nutrition?.perPortion).toMatchObject({ fatG: 20.5, carbohydrateG: 25, saltG: 0.025 });
  });

  it('of the portions together is that of the cake', () => {
    const { nutrition } = nutritionOf({
      weighedIn: bowl,
      ingredients: [butter, sugar],
      finishedG: 160,
      portions: 7,
    });
    expect((nutrition?.perPortion?.fatG ?? 0) * 7).toBeCloseTo(82, 2);
    expect((nutrition?.portionG ?? 0) * 7).toBeCloseTo(160, 2);
  });

  it('is not guessed where figures are missing, and says whose', () => {
    const bare = shelfItem('sugar');
    expect(
      nutritionOf({ weighedIn: bowl, ingredients: [butter, bare], finishedG: 160, portions: null }),
    ).toEqual({
      nutrition: null,
      missing: ['sugar'],
    });
    const none = [...bowl, { ingredientId: 'gold-leaf', grams: 0 }];
    expect(
      nutritionOf({ weighedIn: none, ingredients: [butter, sugar], finishedG: 160, portions: null }).missing,
    ).toEqual([]);
  });

  it('takes polyols out of the carbohydrate before its energy', () => {
    expect(energyOf({ ...NO_NUTRIENTS, carbohydrateG: 10, polyolsG: 4 })).toEqual({ kj: 142, kcal: 33.6 });
    expect(energyOf({ ...NO_NUTRIENTS, alcoholG: 10, fibreG: 10 })).toEqual({ kj: 370, kcal: 90 });
  });
});
