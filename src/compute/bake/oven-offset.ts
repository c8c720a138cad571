/**
 * Does the oven run hotter or cooler than its dial? Only bakes at different settings with a probe in the middle
 * can tell that from a slow recipe, so it is answered from four such bakes over at least 15 °C of settings on,
 * and even then softly: eight leave some ± 8 °C, so show the standard deviation beside it.
 * Factor and offset together, most probable values by Gauss–Newton; offset prior 0 ± 10 °C (house rule).
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import { neutralBake } from './bake-case.ts';
import type { BakeConstants } from './constants.ts';
import { caseOfRow } from './log-fit.ts';
import type { RecipeClass } from './recipe-class.ts';
import { expectedMinutes, type FactorBelief, priorBelief, scatterVariance } from './time-factor.ts';

export interface OvenOffset {
  /** True heat less dial, °C. */
  offsetC: number;
  sdC: number;
  bakes: number;
}

const PRIOR_VAR = 10 * 10;
/** A probe's clock is better than a baker's eye for done. */
const PROBE_SD_MIN = 1.5;
const LEAST_BAKES = 4;
const LEAST_SPAN_C = 15;
const ROUNDS = 30;
const NUDGE_C = 0.5;

interface Guess {
  lnFactor: number;
  offsetC: number;
  varOffset: number;
}

/** The oven's offset in °C from a recipe's probed bakes; null when they cannot tell. */
export function ovenOffset(
  rows: readonly BakeLogRow[],
  recipe: { recipeClass: RecipeClass; heightMm: number },
  constants: BakeConstants,
): OvenOffset | null {
  const probed = rows.filter((row) => row.probeC !== undefined && row.core === 'none');
  const settings = probed.map((row) => row.ovenC);
  if (probed.length < LEAST_BAKES || Math.max(...settings) - Math.min(...settings) < LEAST_SPAN_C)
    return null;
  const prior = priorBelief(recipe.recipeClass, constants);
  const expected: ExpectedAt = (row, { lnFactor, offsetC }) => {
    const asked = caseOfRow(row, recipe.heightMm, constants);
    const bake = neutralBake({ ...asked, ovenC: asked.ovenC + offsetC }, constants);
    return bake.ok ? expectedMinutes({ ...prior, lnFactor }, bake.value, constants.lagMin) : null;
  };
  let at: Guess = { lnFactor: prior.lnFactor, offsetC: 0, varOffset: PRIOR_VAR };
  for (let round = 0; round < ROUNDS; round++) {
    const next = nextGuess(at, prior, probed, expected, constants);
    if (next === null) return null;
    const moved = Math.abs(next.lnFactor - at.lnFactor) + Math.abs(next.offsetC - at.offsetC);
    at = next;
    if (moved < 1e-9) break;
  }
  const sdC = quantiseRatio(Math.sqrt(at.varOffset));
  return { offsetC: quantiseRatio(at.offsetC), sdC, bakes: probed.length };
}

type ExpectedAt = (row: BakeLogRow, guess: { lnFactor: number; offsetC: number }) => number | null;

/** One Gauss–Newton step; null when a row cannot be reckoned (an oven no hotter than the probe). */
function nextGuess(
  at: Guess,
  prior: FactorBelief,
  probed: readonly BakeLogRow[],
  expected: ExpectedAt,
  constants: BakeConstants,
): Guess | null {
  let [aa, ao, oo] = [1 / prior.varLnFactor, 0, 1 / PRIOR_VAR];
  let [ra, ro] = [(prior.lnFactor - at.lnFactor) * aa, -at.offsetC * oo];
  for (const row of probed) {
    const here = expected(row, at);
    const nudged = expected(row, { ...at, offsetC: at.offsetC + NUDGE_C });
    if (here === null || nudged === null) return null;
    const variance = scatterVariance(here, { ...constants, doneSdMin: PROBE_SD_MIN });
    const [slope, drift, residual] = [here - constants.lagMin, (nudged - here) / NUDGE_C, row.minutes - here];
    const weight = 1 / (1 + (residual * residual) / (9 * variance)) / variance;
    aa += weight * slope * slope;
    ao += weight * slope * drift;
    oo += weight * drift * drift;
    ra += weight * slope * residual;
    ro += weight * drift * residual;
  }
  const det = aa * oo - ao * ao;
  return {
    lnFactor: at.lnFactor + (oo * ra - ao * ro) / det,
    offsetC: at.offsetC + (aa * ro - ao * ra) / det,
    varOffset: aa / det,
  };
}
