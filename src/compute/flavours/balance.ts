/**
 * Does a formula balance? Four rules of thumb, each breach a named warning with its numbers.
 * Sugar ≤ flour, fat ≤ eggs, eggs + liquid about = flour: W. Gisslen, Professional Baking, 'Cake Formula
 * Balance' (paraphrase seen on public pages), for creamed and all-in-one batters. Cocoa wants 75–100 % of its
 * weight in water or milk (same section, seen). High-ratio batters (oil, melted): sugar 110–160 % of flour at
 * most (from memory). 'About' is taken as ± 35 %, and cocoa counts as flour: common practice, no source.
 */

import type { Role } from '../../domain/ingredient.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Formula, MixingMethod } from '../../domain/recipe.ts';

const ABOUT = 0.35;
const HIGH_RATIO_SUGAR = 1.6;
/** Rounding in a written formula must not raise a warning. */
const SLACK = 1.005;

interface Weights {
  flourG: number;
  /** Raising agents; self-raising flour weighs its own, so plain flour is allowed the powder beside it. */
  raisingG: number;
  sugarG: number;
  fatG: number;
  eggG: number;
  liquidG: number;
  cocoaG: number;
}

function weights(formula: Formula): Weights {
  const of = (role: Role): number =>
    formula.reduce((sum, line) => sum + (line.role === role ? line.grams : 0), 0);
  const cocoaG = formula.reduce((sum, line) => sum + ((line.drinks ?? 0) > 0 ? line.grams : 0), 0);
  const cocoaInFlour = formula.reduce(
    (sum, line) => sum + (line.role === 'flour' && (line.drinks ?? 0) > 0 ? line.grams : 0),
    0,
  );
  return {
    flourG: of('flour') + cocoaG - cocoaInFlour,
    raisingG: of('raising'),
    sugarG: of('sugar'),
    fatG: of('fat'),
    eggG: of('egg'),
    liquidG: of('liquid'),
    cocoaG,
  };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const grams = (g: number): string => `${Math.round(g)} g`;

function sugarWarning({ sugarG, flourG, raisingG }: Weights, limit: number): Warning[] {
  if (flourG === 0 || sugarG <= (flourG + raisingG) * limit * SLACK) return [];
  const message = `Sugar ${grams(sugarG)} is ${percent(sugarG / flourG)} of the flour and cocoa (${grams(flourG)}); above ${percent(limit)} the crumb sinks and sticks.`;
  return [{ code: 'sugar-over-flour', message }];
}

function fatWarning({ fatG, eggG }: Weights): Warning[] {
  if (eggG === 0 || fatG <= eggG * SLACK) return [];
  const message = `Fat ${grams(fatG)} is more than the eggs (${grams(eggG)}) can hold; expect a heavy, greasy crumb.`;
  return [{ code: 'fat-over-eggs', message }];
}

function liquidWarning({ eggG, liquidG, flourG }: Weights): Warning[] {
  const wet = eggG + liquidG;
  if (flourG === 0 || eggG === 0) return [];
  const ratio = wet / flourG;
  if (Math.abs(ratio - 1) <= ABOUT) return [];
  const fault = ratio > 1 ? 'too wet: it may not set' : 'too dry: loosen it with a little milk';
  const message = `Eggs and liquid ${grams(wet)} are ${percent(ratio)} of the flour and cocoa (${grams(flourG)}); ${fault}.`;
  return [{ code: 'liquid-off-flour', message }];
}

/** Cocoa without liquid is the classic fault: it drinks most of its own weight. */
function cocoaWarning(formula: Formula, { cocoaG, eggG, liquidG, flourG }: Weights): Warning[] {
  const wanted = formula.reduce((sum, line) => sum + line.grams * (line.drinks ?? 0), 0);
  // The eggs are already spoken for by flour and cocoa; only what exceeds those is free.
  const spare = liquidG + Math.max(0, eggG - flourG);
  if (cocoaG === 0 || spare >= wanted / SLACK) return [];
  const message = `Cocoa ${grams(cocoaG)} wants at least ${grams(wanted)} of extra milk or water; the formula has ${grams(spare)} to spare.`;
  return [{ code: 'cocoa-without-liquid', message }];
}

/** Named warnings for a formula made by a method; none for whisked, angel and fruit batters but cocoa's. */
export function balanceWarnings(formula: Formula, method: MixingMethod): Warning[] {
  const w = weights(formula);
  const cocoa = cocoaWarning(formula, w);
  if (method === 'creamed' || method === 'all-in-one') {
    return [...sugarWarning(w, 1), ...fatWarning(w), ...liquidWarning(w), ...cocoa];
  }
  if (method === 'oil' || method === 'melted') return [...sugarWarning(w, HIGH_RATIO_SUGAR), ...cocoa];
  return cocoa;
}
