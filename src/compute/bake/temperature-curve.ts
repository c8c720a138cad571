/**
 * How do the middle and the edge warm, minute by minute? Conduction alone, on the recipe's own clock (lag and
 * factor). The edge is 5 mm in from the wall at half height. While it holds water no crumb passes the boiling
 * point, so both are shown up to it; drying crust, which does get hotter, is left out.
 */
import { quantiseMin, quantiseRatio } from '../../domain/quantise.ts';
import type { BakeConstants } from './constants.ts';
import { fourierNumber } from './series-minutes.ts';
import type { BakeSolid, Side } from './solid.ts';
import { seriesTerms, thetaFromTerms } from './theta.ts';

export interface CurvePoint {
  minutes: number;
  centreC: number;
  edgeC: number;
}

export interface CurveClock {
  ovenC: number;
  /** The recipe's factor × tin × band × core × size: minutes of this bake per minute of the neutral series. */
  timeFactor: number;
  boilingC: number;
}

const EDGE_MM = 5;
const LEAST_FOURIER = 1e-4;

/** Temperatures every `stepMin` minutes from 0 to `untilMin`, °C. */
export function temperatureCurve(
  solid: BakeSolid,
  clock: CurveClock,
  constants: BakeConstants,
  { stepMin, untilMin }: { stepMin: number; untilMin: number },
): CurvePoint[] {
  const sides = solid.sides.map((side, index) => ({ side, edgeAt: index === 0 ? edgePosition(side) : 0 }));
  const thetas = sides.map(({ side, edgeAt }) => sideCurve(side, edgeAt, constants));
  const points: CurvePoint[] = [];
  for (let step = 0; step * stepMin <= untilMin; step++) {
    const minutes = step * stepMin;
    const neutral = Math.max(0, minutes - constants.lagMin) / clock.timeFactor;
    const both = thetas.map((at) => at(neutral));
    const centreC = heated(
      both.reduce((product, { centre }) => product * centre, 1),
      clock,
      constants,
    );
    const edgeC = heated(
      both.reduce((product, { edge }) => product * edge, 1),
      clock,
      constants,
    );
    points.push({ minutes: quantiseMin(minutes), centreC, edgeC });
  }
  return points;
}

function heated(theta: number, clock: CurveClock, constants: BakeConstants): number {
  const conductedC = clock.ovenC - theta * (clock.ovenC - constants.batterC);
  return quantiseRatio(Math.min(conductedC, clock.boilingC));
}

function edgePosition(side: Side): number {
  return side.halfMm > EDGE_MM ? 1 - EDGE_MM / side.halfMm : 0;
}

function sideCurve(side: Side, edgeAt: number, constants: BakeConstants) {
  const biot = (constants.kappaPerM * side.halfMm) / 1000;
  const terms = seriesTerms(side.geometry, biot, LEAST_FOURIER);
  return (minutes: number): { centre: number; edge: number } => {
    const fourier = fourierNumber(side.halfMm, constants, minutes);
    if (fourier < LEAST_FOURIER) return { centre: 1, edge: 1 };
    return {
      centre: thetaFromTerms(side.geometry, terms, fourier),
      edge: thetaFromTerms(side.geometry, terms, fourier, edgeAt),
    };
  };
}
