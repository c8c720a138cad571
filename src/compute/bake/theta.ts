/**
 * How far from done is a point of a wall, a cylinder or a sphere after a time? θ = (T − T_oven) ÷ (T_start −
 * T_oven): 1 at the start, 0 when it is as hot as the oven. θ = Σ C·exp(−ζ²·Fo)·shape(ζ·x), with as many terms
 * as the time needs (8 at least; the first alone is wrong for wide tins). x is the position: 0 in the middle, 1
 * at the surface. Valid for Fo = 0 and from 1e-4 on. Source: Incropera & DeWitt ch. 5; Carslaw & Jaeger,
 * Conduction of Heat in Solids (both from memory).
 */
import { besselJ01 } from './bessel.ts';
import { type Geometry, type SeriesTerm, seriesTerm } from './eigenvalues.ts';

const LEAST_TERMS = 8;
/** exp(−40) is 4e-18: what is left out cannot be seen. */
const LEFT_OUT = 40;
const LEAST_FOURIER = 1e-4;

/** Tins of one kitchen share their walls' sizes, and roots take long to find: each is kept. */
const found = new Map<string, readonly SeriesTerm[]>();
const MOST_FOUND = 5000;

/** The terms needed from a given Fourier number on. */
export function seriesTerms(geometry: Geometry, biot: number, leastFourier: number): readonly SeriesTerm[] {
  const key = `${geometry} ${biot} ${leastFourier}`;
  const known = found.get(key);
  if (known !== undefined) return known;
  if (found.size >= MOST_FOUND) found.clear();
  const terms = freshTerms(geometry, biot, leastFourier);
  found.set(key, terms);
  return terms;
}

function freshTerms(geometry: Geometry, biot: number, leastFourier: number): SeriesTerm[] {
  const terms: SeriesTerm[] = [];
  for (let n = 1; ; n++) {
    const term = seriesTerm(geometry, biot, n);
    terms.push(term);
    if (n >= LEAST_TERMS && term.zeta * term.zeta * leastFourier > LEFT_OUT) return terms;
  }
}

/** Sum of the series at a position; the terms must suit the Fourier number. */
export function thetaFromTerms(
  geometry: Geometry,
  terms: readonly SeriesTerm[],
  fourier: number,
  position = 0,
): number {
  let sum = 0;
  for (const { zeta, coefficient } of terms) {
    if (zeta * zeta * fourier > LEFT_OUT) break;
    sum += coefficient * Math.exp(-zeta * zeta * fourier) * SHAPE[geometry](zeta * position);
  }
  return sum;
}

const SHAPE: Record<Geometry, (x: number) => number> = {
  wall: (x) => Math.cos(x),
  cylinder: (x) => (x === 0 ? 1 : besselJ01(x).j0),
  sphere: (x) => (x === 0 ? 1 : Math.sin(x) / x),
};

/**
 * θ for a Biot number, a Fourier number and a position from 0 (middle) to 1 (surface); a RangeError outside
 * the valid range. `theta('wall', 1, 1)` is 0.348177.
 */
export function theta(geometry: Geometry, biot: number, fourier: number, position = 0): number {
  if (fourier === 0) return 1;
  if (!(fourier >= LEAST_FOURIER))
    throw new RangeError(`A Fourier number is 0 or at least 1e-4, not ${fourier}.`);
  if (!(position >= 0 && position <= 1)) throw new RangeError(`A position is from 0 to 1, not ${position}.`);
  return thetaFromTerms(geometry, seriesTerms(geometry, biot, fourier), fourier, position);
}
