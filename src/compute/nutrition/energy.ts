/**
 * How much energy is in it? Grams of each nutrient × its factor, in kJ and kcal apart, never one from the other.
 * Factors: Regulation (EU) No 1169/2011 Annex XIV (from memory): kJ/g and kcal/g of carbohydrate without polyols
 * 17 and 4, polyols 10 and 2.4, protein 17 and 4, fat 37 and 9, alcohol 29 and 7, fibre 8 and 2.
 */
import type { Nutrients } from '../../domain/ingredient.ts';

type EnergyNutrient = 'carbohydrate' | 'polyols' | 'protein' | 'fat' | 'alcohol' | 'fibre';

export const ENERGY_FACTORS: Record<EnergyNutrient, { kjPerG: number; kcalPerG: number }> = {
  carbohydrate: { kjPerG: 17, kcalPerG: 4 },
  polyols: { kjPerG: 10, kcalPerG: 2.4 },
  protein: { kjPerG: 17, kcalPerG: 4 },
  fat: { kjPerG: 37, kcalPerG: 9 },
  alcohol: { kjPerG: 29, kcalPerG: 7 },
  fibre: { kjPerG: 8, kcalPerG: 2 },
};

export interface Energy {
  kj: number;
  kcal: number;
}

const toThousandth = (value: number): number => Math.round(value * 1000) / 1000;

/** Energy of these grams, quantised to 0.001. */
export function energyOf(nutrients: Nutrients): Energy {
  const gramsOf: Record<EnergyNutrient, number> = {
    carbohydrate: Math.max(0, nutrients.carbohydrateG - nutrients.polyolsG),
    polyols: nutrients.polyolsG,
    protein: nutrients.proteinG,
    fat: nutrients.fatG,
    alcohol: nutrients.alcoholG,
    fibre: nutrients.fibreG,
  };
  let kj = 0;
  let kcal = 0;
  for (const [name, grams] of Object.entries(gramsOf) as [EnergyNutrient, number][]) {
    kj += grams * ENERGY_FACTORS[name].kjPerG;
    kcal += grams * ENERGY_FACTORS[name].kcalPerG;
  }
  return { kj: toThousandth(kj), kcal: toThousandth(kcal) };
}
