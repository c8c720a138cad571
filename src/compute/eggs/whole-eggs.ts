/**
 * How many eggs? Nearest whole number while that is within the kitchen's tolerance of the exact count;
 * otherwise step up to the next egg and scale the rest to it, or weigh beaten egg. Where a formula counts
 * eggs, yolks and whites, the largest count decides and the others follow at their nearest whole number.
 * Rule: common practice, no source.
 */
import { type EggPart, PART_SHARE } from '../../domain/egg.ts';
import type { EggSetting } from '../../domain/kitchen.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import type { Formula } from '../../domain/recipe.ts';

export type EggRule = 'nearest' | 'step-up' | 'weigh';

/** One counted line of a load: eggs, yolks or whites. */
export interface CountedEgg {
  ingredientId: string;
  name: string;
  part: EggPart;
  /** Shelled mass of one, g. */
  unitG: number;
  /** Exact count before rounding. */
  exact: number;
  /** Whole count; under `weigh`, how many to crack. */
  whole: number;
  /** What goes into the bowl, g, before the scale's step where it is weighed. */
  grams: number;
}

export interface EggPlan {
  rule: EggRule;
  /** Of the part that decides. */
  exact: number;
  whole: number;
  /** whole ÷ exact − 1. */
  deviation: number;
  /** Factor on every weighed ingredient, not quantised: mixes of the same whole eggs must come out alike. */
  factor: number;
  /** Which of `parts` decides. */
  decidedBy: string;
  parts: CountedEgg[];
}

export type EggRuling = Pick<EggSetting, 'shelledG' | 'tolerance' | 'otherwise'>;

/** Shelled mass of an egg, yolk or white in this kitchen, g. */
export const unitG = (setting: Pick<EggSetting, 'shelledG'>, part: EggPart): number =>
  quantiseG(setting.shelledG * PART_SHARE[part]);

/** Exact counts carry the rounding of the masses they came from; that much is never a reason to step up. */
const COUNT_NOISE = 5e-6;

/** Whole number of eggs for an exact count, by the kitchen's rule. */
export function wholeEggs(exact: number, setting: EggRuling): { rule: EggRule; whole: number } {
  const nearest = Math.round(exact);
  const allowed = setting.tolerance * exact + COUNT_NOISE;
  if (Math.abs(nearest - exact) <= allowed) return { rule: 'nearest', whole: nearest };
  return { rule: setting.otherwise, whole: Math.ceil(exact) };
}

/** Largest exact count that the rule still serves with this many whole eggs. */
export function mostServedBy(whole: number, setting: EggRuling): number {
  return Math.min(whole / (1 - setting.tolerance), whole + 0.5 - COUNT_NOISE);
}

function exactParts(formula: Formula, scale: number, setting: EggRuling): CountedEgg[] {
  return formula.flatMap((line) => {
    if (line.eggPart === undefined || line.grams <= 0) return [];
    const each = unitG(setting, line.eggPart);
    const exact = (line.grams * scale) / each;
    const { ingredientId, name } = line;
    return [{ ingredientId, name, part: line.eggPart, unitG: each, exact, whole: 0, grams: 0 }];
  });
}

/** Yolks and whites that follow the deciding count: never none where the formula has some. */
const followingWhole = (exact: number): number => (exact < 1 ? 1 : Math.round(exact));

/**
 * Whole eggs for a load made at `scale` times the formula; null for a formula without eggs.
 * @example planEggs(equalWeights, 860 / 1000, kitchen.egg)?.whole // 5 from 4.3
 */
export function planEggs(formula: Formula, scale: number, setting: EggRuling): EggPlan | null {
  const exact = exactParts(formula, scale, setting).filter((part) => part.exact > 0);
  const [first, ...others] = exact;
  if (first === undefined) return null;
  const deciding = others.reduce((most, part) => (part.exact > most.exact ? part : most), first);
  const { rule, whole } = wholeEggs(deciding.exact, setting);
  const factor = rule === 'step-up' ? whole / deciding.exact : 1;
  const parts = exact
    .map((part) => wholePart(part, part === deciding, rule, whole, factor))
    .map((part) => ({ ...part, exact: quantiseRatio(part.exact), grams: quantiseG(part.grams) }));
  const deviation = quantiseRatio(whole / deciding.exact - 1);
  const decided = { exact: quantiseRatio(deciding.exact), decidedBy: deciding.ingredientId };
  return { rule, whole, deviation, factor, ...decided, parts };
}

/** `planEggs(…)?.factor ?? 1` for many scales of one formula, without a plan each. */
export function eggFactor(formula: Formula, setting: EggRuling): (scale: number) => number {
  const parts = formula.flatMap(({ eggPart, grams }) =>
    eggPart === undefined || grams <= 0 ? [] : [{ grams, each: unitG(setting, eggPart) }],
  );
  return (scale) => {
    let exact = 0;
    for (const { grams, each } of parts) {
      const own = (grams * scale) / each;
      if (own > exact) exact = own;
    }
    if (exact === 0) return 1;
    const { rule, whole } = wholeEggs(exact, setting);
    return rule === 'step-up' ? whole / exact : 1;
  };
}

function wholePart(part: CountedEgg, decides: boolean, rule: EggRule, n: number, factor: number): CountedEgg {
  if (rule === 'weigh') return { ...part, whole: Math.ceil(part.exact), grams: part.exact * part.unitG };
  const whole = decides ? n : followingWhole(part.exact * factor);
  return { ...part, whole, grams: whole * part.unitG };
}

/** Scale at which the deciding count is so many whole eggs; null for a formula without eggs. */
export function scaleForEggs(formula: Formula, eggs: number, setting: EggRuling): number | null {
  const [first, ...others] = exactParts(formula, 1, setting).filter((part) => part.exact > 0);
  if (first === undefined) return null;
  return eggs / Math.max(first.exact, ...others.map((part) => part.exact));
}

/** Where a yolk or white that follows lands further off than the kitchen's tolerance. */
export function partsOff(plan: EggPlan, setting: EggRuling): CountedEgg[] {
  if (plan.rule === 'weigh') return [];
  return plan.parts.filter(
    (part) =>
      part.ingredientId !== plan.decidedBy &&
      Math.abs(part.whole / (part.exact * plan.factor) - 1) > setting.tolerance,
  );
}
