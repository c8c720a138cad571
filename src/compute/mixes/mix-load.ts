/** One bowlful: eggs made whole, everything else scaled to them and rounded to what a scale can weigh. */
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import type { Formula } from '../../domain/recipe.ts';
import { type EggPlan, planEggs } from '../eggs/whole-eggs.ts';
import { roundLines } from '../rounding/round-lines.ts';
import type { LoadTin, MixKitchen, MixLine, MixLoad } from './mix.types.ts';

export const sumG = (masses: readonly number[]): number => quantiseG(masses.reduce((sum, g) => sum + g, 0));

/** Total of a formula, g. */
export const formulaG = (formula: Formula): number => sumG(formula.map((line) => line.grams));

function countedG(eggs: EggPlan | null): Map<string, number> {
  if (eggs === null || eggs.rule === 'weigh') return new Map();
  return new Map(eggs.parts.map((part) => [part.ingredientId, part.grams]));
}

/** The lines of one bowl: counted eggs as they are, weighed ingredients rounded. */
export function bowlLines(
  formula: Formula,
  scale: number,
  eggs: EggPlan | null,
  kitchen: MixKitchen,
): MixLine[] {
  const counted = countedG(eggs);
  const present = formula.filter((line) => line.grams > 0);
  const weighed = present.filter((line) => !counted.has(line.ingredientId));
  const toWeigh = weighed.map((line) => ({ exactG: line.grams * scale, fine: line.fine }));
  const rounded = roundLines(toWeigh, kitchen.scale);
  const byId = new Map(weighed.map((line, index) => [line.ingredientId, rounded[index]]));
  return present.map((line) => {
    const { ingredientId, name, role, fine, eggPart } = line;
    const known = { ingredientId, name, role, fine, ...(eggPart === undefined ? {} : { eggPart }) };
    const eggG = counted.get(ingredientId);
    if (eggG !== undefined)
      return { ...known, exactG: quantiseG(line.grams * scale), grams: eggG, stepG: null };
    const found = byId.get(ingredientId);
    return {
      ...known,
      exactG: quantiseG(line.grams * scale),
      grams: found?.grams ?? 0,
      stepG: found?.stepG ?? null,
    };
  });
}

/** A load for these tins; a shortfall is shared over them in proportion to what they asked for. */
export function mixLoad(formula: Formula, tins: Omit<LoadTin, 'receivesG'>[], kitchen: MixKitchen): MixLoad {
  const askedG = sumG(tins.map((tin) => tin.askedG));
  const askedScale = askedG / formulaG(formula);
  const eggs = planEggs(formula, askedScale, kitchen.egg);
  const scale = askedScale * (eggs?.factor ?? 1);
  const lines = bowlLines(formula, scale, eggs, kitchen);
  const batterG = sumG(lines.map((line) => line.grams));
  const share = batterG < askedG ? batterG / askedG : 1;
  return {
    tins: tins.map((tin) => ({ ...tin, receivesG: quantiseG(tin.askedG * share) })),
    askedG,
    askedScale: quantiseRatio(askedScale),
    scale: quantiseRatio(scale),
    eggs,
    lines,
    batterG,
    surplusG: quantiseG(batterG - askedG),
  };
}
