/**
 * What is in 100 g of the finished cake, and in a portion? Everything weighed in × its figures ÷ the finished
 * weight: steam takes water away and nothing else (alcohol that boils off is counted as if it stayed).
 */
import type { Ingredient, Nutrients } from '../../domain/ingredient.ts';
import { quantiseG } from '../../domain/quantise.ts';
import { type Energy, energyOf } from './energy.ts';

export interface NutritionFigures extends Nutrients {
  energy: Energy;
}

export interface Nutrition {
  per100G: NutritionFigures;
  /** Null where nobody says how many portions there are. */
  perPortion: NutritionFigures | null;
  /** Finished weight of a portion, g. */
  portionG: number | null;
}

export interface NutritionOutcome {
  /** Null where the figures of an ingredient are missing. */
  nutrition: Nutrition | null;
  /** Ids of the ingredients that nobody has filled in. */
  missing: string[];
}

const NUTRIENT_KEYS = [
  'fatG',
  'saturatesG',
  'carbohydrateG',
  'sugarsG',
  'polyolsG',
  'fibreG',
  'proteinG',
  'saltG',
  'alcoholG',
] as const satisfies readonly (keyof Nutrients)[];

export const NO_NUTRIENTS: Nutrients = {
  fatG: 0,
  saturatesG: 0,
  carbohydrateG: 0,
  sugarsG: 0,
  polyolsG: 0,
  fibreG: 0,
  proteinG: 0,
  saltG: 0,
  alcoholG: 0,
};

function scaled(nutrients: Nutrients, by: number): Nutrients {
  const result = { ...NO_NUTRIENTS };
  for (const key of NUTRIENT_KEYS) result[key] = nutrients[key] * by;
  return result;
}

function summed(all: readonly Nutrients[]): Nutrients {
  const result = { ...NO_NUTRIENTS };
  for (const one of all) for (const key of NUTRIENT_KEYS) result[key] += one[key];
  return result;
}

function figures(nutrients: Nutrients): NutritionFigures {
  const result = { ...NO_NUTRIENTS };
  for (const key of NUTRIENT_KEYS) result[key] = quantiseG(nutrients[key]);
  return { ...result, energy: energyOf(nutrients) };
}

export interface NutritionAsk {
  weighedIn: readonly { ingredientId: string; grams: number }[];
  ingredients: readonly Ingredient[];
  /** g; more than 0. */
  finishedG: number;
  portions: number | null;
}

/**
 * Figures per 100 g and per portion, g quantised to 0.001; energy from the factors. An ingredient that weighs
 * nothing needs no figures.
 */
export function nutritionOf({ weighedIn, ingredients, finishedG, portions }: NutritionAsk): NutritionOutcome {
  const used = weighedIn.filter(({ grams }) => grams > 0);
  const shelf = new Map(ingredients.map((one) => [one.id, one.nutrients]));
  const missing = [...new Set(used.map(({ ingredientId }) => ingredientId))].filter(
    (id) => shelf.get(id) === undefined,
  );
  if (missing.length > 0) return { nutrition: null, missing };
  const whole = summed(
    used.map(({ ingredientId, grams }) => scaled(shelf.get(ingredientId) ?? NO_NUTRIENTS, grams / 100)),
  );
  const portionG = portions === null ? null : finishedG / portions;
  return {
    nutrition: {
      per100G: figures(scaled(whole, 100 / finishedG)),
      perPortion: portions === null ? null : figures(scaled(whole, 1 / portions)),
      portionG: portionG === null ? null : quantiseG(portionG),
    },
    missing: [],
  };
}
