/**
 * Does the oven run hotter or cooler than its dial? Only bakes at different settings with a probe in the middle
 * can tell that from a slow recipe, so it is answered from four such bakes over at least 15 °C of settings on.
 * Factor and offset together, most probable values by Gauss–Newton; offset prior 0 ± 10 °C (house rule).
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import { neutralBake } from './bake-case.ts';
import type { BakeConstants } from './constants.ts';
import { caseOfRow } from './log-fit.ts';
import type { RecipeClass } from './recipe-class.ts';
import { expectedMinutes, priorBelief, scatterVariance } from './time-factor.ts';

export interface OvenOffset {
  /** True heat less dial, °C. */
  offsetC: number;
  sdC: number;
  bakes: number;
}

const PRIOR_SD_C = 10;
const LEAST_BAKES = 4;
const LEAST_SPAN_C = 15;
const ROUNDS = 30;
const NUDGE_C = 0.5;

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
  const expected = (row: BakeLogRow, lnFactor: number, offsetC: number): number | null => {
    const asked = caseOfRow(row, recipe.heightMm, constants);
    const bake = neutralBake({ ...asked, ovenC: asked.ovenC + offsetC }, constants);
    return bake.ok ? expectedMinutes({ ...prior, lnFactor }, bake.value, constants.lagMin) : null;
  };
  let at = { lnFactor: prior.lnFactor, offsetC: 0, varOffset: PRIOR_SD_C * PRIOR_SD_C };
  for (let round = 0; round < ROUNDS; round++) {
    let [aa, ao, oo] = [1 / prior.varLnFactor, 0, 1 / (PRIOR_SD_C * PRIOR_SD_C)];
    let [ra, ro] = [(prior.lnFactor - at.lnFactor) * aa, -at.offsetC * oo];
    for (const row of probed) {
      const here = expected(row, at.lnFactor, at.offsetC);
      const nudged = expected(row, at.lnFactor, at.offsetC + NUDGE_C);
      if (here === null || nudged === null) return null;
      const variance = scatterVariance(here, constants);
      const [slope, drift, residual] = [
        here - constants.lagMin,
        (nudged - here) / NUDGE_C,
        row.minutes - here,
      ];
      const weight = 1 / (1 + (residual * residual) / (9 * variance)) / variance;
      aa += weight * slope * slope;
      ao += weight * slope * drift;
      oo += weight * drift * drift;
      ra += weight * slope * residual;
      ro += weight * drift * residual;
    }
    const det = aa * oo - ao * ao;
    const lnStep = (oo * ra - ao * ro) / det;
    const offsetStep = (aa * ro - ao * ra) / det;
    at = { lnFactor: at.lnFactor + lnStep, offsetC: at.offsetC + offsetStep, varOffset: aa / det };
    if (Math.abs(lnStep) + Math.abs(offsetStep) < 1e-9) break;
  }
  const { offsetC, varOffset } = at;
  return { offsetC: quantiseRatio(offsetC), sdC: quantiseRatio(Math.sqrt(varOffset)), bakes: probed.length };
}
