/**
 * How long until the middle is as hot as it should be, for a neutral sponge, without lag? The time at which
 * the product of the sides' θ falls to x = (T_oven − T_done) ÷ (T_oven − T_batter). Valid for ovens hotter
 * than the temperature wanted.
 */
import type { BakeConstants } from './constants.ts';
import type { SeriesTerm } from './eigenvalues.ts';
import type { BakeSolid, Side } from './solid.ts';
import { seriesTerms, thetaFromTerms } from './theta.ts';

/** Below this Fourier number a centre has not felt the heat: 1 − θ < erfc(1/(2√Fo)) ≈ 1e-14. */
const UNFELT_FOURIER = 0.008;

interface SideSeries {
  side: Side;
  terms: readonly SeriesTerm[];
}

/** θ of the middle as a function of minutes. */
function centreTheta(solid: BakeSolid, constants: BakeConstants): (minutes: number) => number {
  const series: SideSeries[] = solid.sides.map((side) => ({
    side,
    terms: seriesTerms(side.geometry, (constants.kappaPerM * side.halfMm) / 1000, UNFELT_FOURIER),
  }));
  return (minutes) => series.reduce((product, one) => product * sideTheta(one, constants, minutes), 1);
}

function sideTheta({ side, terms }: SideSeries, constants: BakeConstants, minutes: number): number {
  const fourier = fourierNumber(side.halfMm, constants, minutes);
  return fourier < UNFELT_FOURIER ? 1 : thetaFromTerms(side.geometry, terms, fourier);
}

/** Fo = α·t ÷ l². */
export function fourierNumber(halfMm: number, constants: BakeConstants, minutes: number): number {
  return (constants.alphaM2PerS * minutes * 60 * 1e6) / (halfMm * halfMm);
}

/** The part of the way to the oven's heat that is still to go when the middle is done; null when it never is. */
function doneTheta(ovenC: number, doneC: number, batterC: number): number | null {
  return ovenC > doneC && doneC > batterC ? (ovenC - doneC) / (ovenC - batterC) : null;
}

/** Minutes of the series alone for an oven in °C, and a middle in °C where it is not the constants'. */
export type SeriesClock = (ovenC: number, doneC?: number) => number | null;

/** The clock of one solid: its roots are found once, then any oven is quick to ask. */
export function seriesClock(solid: BakeSolid, constants: BakeConstants): SeriesClock {
  const thetaAt = centreTheta(solid, constants);
  return (ovenC, doneC = constants.centreC) => {
    const target = doneTheta(ovenC, doneC, constants.batterC);
    return target === null ? null : minutesForTheta(thetaAt, target);
  };
}

/**
 * Minutes of the series alone (no lag, no factor), unrounded; null when the oven is no hotter than the
 * temperature wanted. A 6 in round, 3 in high, at 160 °C: 47.668.
 */
export function seriesMinutes(
  solid: BakeSolid,
  ovenC: number,
  constants: BakeConstants,
  doneC?: number,
): number | null {
  return seriesClock(solid, constants)(ovenC, doneC);
}

/** The time at which a falling θ reaches a target between 0 and 1: bracketed by doubling, then halved. */
export function minutesForTheta(thetaAt: (minutes: number) => number, target: number): number {
  let high = 1;
  while (thetaAt(high) > target) high *= 2;
  let low = 0;
  for (let halving = 0; halving < 60 && high - low > 1e-9; halving++) {
    const middle = (low + high) / 2;
    if (thetaAt(middle) > target) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
