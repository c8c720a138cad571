/**
 * What do the logged bakes say of this recipe in this oven? One factor m on the time, as a logarithm with a
 * normal prior by class; logged minutes scatter about lag + m·size^power·neutral. Most probable m by
 * Gauss–Newton, each row weighted 1 ÷ (1 + (r/3s)²) so that a wild one pulls little. The power moves only for
 * classes whose prior leaves it free (rich fruit). Method: maximum a posteriori fit with Cauchy weights, textbook.
 */
import type { BakeConstants } from './constants.ts';
import type { RecipeClass } from './recipe-class.ts';

/** What is believed of ln m and the size power: means and covariance. */
export interface FactorBelief {
  lnFactor: number;
  sizePower: number;
  varLnFactor: number;
  varSizePower: number;
  covariance: number;
}

export interface Observation {
  neutralMin: number;
  lnSize: number;
  minutes: number;
}

export interface FactorFit extends FactorBelief {
  /** Weight of each observation, 0 to 1. */
  weights: number[];
}

const ROUNDS = 100;
const CLOSE_ENOUGH = 1e-10;
/** A bake shorter than this beyond its lag is watched closely: scatter shrinks in proportion. */
const WATCHED_MIN = 25;

/** The belief before anything is logged. */
export function priorBelief(recipeClass: RecipeClass, constants: BakeConstants): FactorBelief {
  return {
    lnFactor: Math.log(recipeClass.timeFactor),
    sizePower: recipeClass.sizePower,
    varLnFactor: constants.classLogSd * constants.classLogSd,
    varSizePower: recipeClass.sizePowerSd * recipeClass.sizePowerSd,
    covariance: 0,
  };
}

/**
 * The belief where a recipe starts from what its batter is made of: that factor in place of the class's, and, since
 * neither is sure, a doubt that grows by half the distance between the two (house rule).
 */
export function compositionBelief(
  recipeClass: RecipeClass,
  compositionFactor: number,
  constants: BakeConstants,
): FactorBelief {
  const belief = priorBelief(recipeClass, constants);
  const halfApart = Math.log(recipeClass.timeFactor / compositionFactor) / 2;
  return {
    ...belief,
    lnFactor: Math.log(compositionFactor),
    varLnFactor: belief.varLnFactor + halfApart * halfApart,
  };
}

/** Minutes that a belief expects, at its most probable. */
export function expectedMinutes(
  belief: FactorBelief,
  bake: Omit<Observation, 'minutes'>,
  lagMin: number,
): number {
  return lagMin + bake.neutralMin * Math.exp(belief.lnFactor + belief.sizePower * bake.lnSize);
}

/** Variance of a single logged time about the expected one, min²: the done test's scatter and the model's error. */
export function scatterVariance(minutes: number, constants: BakeConstants): number {
  const done = constants.doneSdMin * Math.min(1, Math.max(0, minutes - constants.lagMin) / WATCHED_MIN);
  const model = constants.modelSd * minutes;
  return done * done + model * model;
}

/** Variance of ln(time) at a size that comes from not knowing the factor. */
export function beliefVariance(belief: FactorBelief, lnSize: number): number {
  return belief.varLnFactor + 2 * lnSize * belief.covariance + lnSize * lnSize * belief.varSizePower;
}

/** The belief after some bakes; with none it is the prior. */
export function fitFactor(
  prior: FactorBelief,
  seen: readonly Observation[],
  constants: BakeConstants,
): FactorFit {
  const start = inverse(prior.varLnFactor, prior.covariance, prior.varSizePower);
  const powerIsFree = prior.varSizePower > 0;
  let belief = prior;
  for (let round = 0; round < ROUNDS; round++) {
    const sums = weighedSums(belief, powerIsFree, seen, constants);
    const dA = prior.lnFactor - belief.lnFactor;
    const dP = prior.sizePower - belief.sizePower;
    const pull = { a: start.aa * dA + start.ap * dP + sums.ra, p: start.ap * dA + start.pp * dP + sums.rp };
    const cov = inverse(start.aa + sums.aa, start.ap + sums.ap, start.pp + sums.pp);
    const step = { a: cov.aa * pull.a + cov.ap * pull.p, p: cov.ap * pull.a + cov.pp * pull.p };
    belief = {
      lnFactor: belief.lnFactor + step.a,
      sizePower: belief.sizePower + step.p,
      varLnFactor: cov.aa,
      varSizePower: cov.pp,
      covariance: cov.ap,
    };
    if (Math.abs(step.a) + Math.abs(step.p) < CLOSE_ENOUGH) break;
  }
  return { ...belief, weights: seen.map((row) => rowTerms(belief, row, constants).weight) };
}

interface Sums {
  aa: number;
  ap: number;
  pp: number;
  ra: number;
  rp: number;
}

/** Σ of weight·slope·slope and weight·slope·residual over the rows. */
function weighedSums(
  belief: FactorBelief,
  powerIsFree: boolean,
  seen: readonly Observation[],
  constants: BakeConstants,
): Sums {
  const sums = { aa: 0, ap: 0, pp: 0, ra: 0, rp: 0 };
  for (const row of seen) {
    const { slope, residual, weight, variance } = rowTerms(belief, row, constants);
    const information = (weight * slope * slope) / variance;
    const lever = powerIsFree ? row.lnSize : 0;
    sums.aa += information;
    sums.ap += information * lever;
    sums.pp += information * lever * lever;
    sums.ra += (weight * slope * residual) / variance;
    sums.rp += (weight * slope * residual * lever) / variance;
  }
  return sums;
}

/** What one logged bake says at a belief. */
export interface Evidence {
  /** Minutes that the belief expects of it. */
  expectedMin: number;
  /** Logged less expected, min. */
  lateMin: number;
  /** Variance of a logged time about the expected one, min². */
  scatterMin2: number;
  /** Late squared over the scatter: 1 for a bake as far off as is usual. */
  off: number;
  /** How much it is heeded, 0 to 1. */
  weight: number;
  /** What it adds to 1 ÷ the variance of ln m. */
  information: number;
}

/** The evidence of one logged bake, unrounded. */
export function evidenceOf(belief: FactorBelief, row: Observation, constants: BakeConstants): Evidence {
  const { slope, residual, weight, variance } = rowTerms(belief, row, constants);
  return {
    expectedMin: slope + constants.lagMin,
    lateMin: residual,
    scatterMin2: variance,
    off: (residual * residual) / variance,
    weight,
    information: (weight * slope * slope) / variance,
  };
}

function rowTerms(belief: FactorBelief, row: Observation, constants: BakeConstants) {
  const expected = expectedMinutes(belief, row, constants.lagMin);
  const variance = scatterVariance(expected, constants);
  const residual = row.minutes - expected;
  const weight = 1 / (1 + (residual * residual) / (9 * variance));
  return { slope: expected - constants.lagMin, residual, weight, variance };
}

/** Inverse of a symmetric 2 × 2; a fixed power has nothing in its row and column, and keeps it so. */
function inverse(aa: number, ap: number, pp: number): { aa: number; ap: number; pp: number } {
  if (pp === 0) return { aa: 1 / aa, ap: 0, pp: 0 };
  const det = aa * pp - ap * ap;
  return { aa: pp / det, ap: -ap / det, pp: aa / det };
}
