/**
 * How tall does the cake come out of this tin? What was asked for; else the recipe's height, or as much of it
 * as the tin can hold. Only a height that somebody asked for is refused.
 */
import type { Problem, Warning } from '../../domain/problem.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { Tin } from '../../domain/tin.ts';

export interface FinishedHeight {
  heightMm: number;
  /** `tin`: the recipe's own height does not fit. */
  from: 'asked' | 'recipe' | 'tin';
  warnings: Warning[];
}

type HeightRule = Pick<Recipe, 'finishedHeightMm' | 'allowedRiseMm'>;

/** A length in whole millimetres, for messages. */
const mm = (lengthMm: number): string => `${Math.round(lengthMm)} mm`;

function overRim(tin: Tin, askedMm: number, highestMm: number, rule: HeightRule): Problem {
  return {
    code: 'height-over-rim',
    severity: 'error',
    message: `${tin.name}: a finished height of ${mm(askedMm)} was asked for; the tin is ${mm(tin.depthMm)} deep and the recipe may stand ${mm(rule.allowedRiseMm)} above the rim, so ${mm(highestMm)} is the most.`,
    hint: `Ask for ${mm(Math.floor(highestMm))} or less, use a deeper tin, or bake it in two and stack them.`,
  };
}

function unusableHeight(tin: Tin, askedMm: number): Problem {
  return {
    code: 'height-not-positive',
    severity: 'error',
    message: `${tin.name}: a finished height of ${String(askedMm)} mm was asked for; it must be more than nothing.`,
    hint: 'Write a height such as 65 mm or 2 1/2in.',
  };
}

function limited(tin: Tin, rule: HeightRule, highestMm: number): Warning {
  return {
    code: 'height-limited',
    message: `${tin.name}: too shallow for the recipe's ${mm(rule.finishedHeightMm)}, so worked out for ${mm(highestMm)}.`,
  };
}

/**
 * Finished height of a cake in a tin, mm.
 * @returns a problem `height-over-rim` when an asked height tops the rim by more than the recipe allows.
 */
export function finishedHeight(rule: HeightRule, tin: Tin, askedMm?: number): Result<FinishedHeight> {
  const highestMm = quantiseMm(tin.depthMm + rule.allowedRiseMm);
  if (askedMm !== undefined) {
    const heightMm = quantiseMm(askedMm);
    if (!(heightMm > 0) || !Number.isFinite(heightMm)) return fail(unusableHeight(tin, askedMm));
    if (heightMm > highestMm) return fail(overRim(tin, heightMm, highestMm, rule));
    return succeed({ heightMm, from: 'asked', warnings: [] });
  }
  if (rule.finishedHeightMm <= highestMm) {
    return succeed({ heightMm: quantiseMm(rule.finishedHeightMm), from: 'recipe', warnings: [] });
  }
  return succeed({ heightMm: highestMm, from: 'tin', warnings: [limited(tin, rule, highestMm)] });
}
