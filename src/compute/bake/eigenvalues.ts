/**
 * Eigenvalues ζ and coefficients C of heat flowing into a wall, a cylinder or a sphere through its surface:
 *   wall      ζ·tan ζ = Bi              C = 4 sin ζ / (2ζ + sin 2ζ)
 *   cylinder  ζ·J1(ζ) = Bi·J0(ζ)        C = 2·J1 / (ζ·(J0² + J1²))
 *   sphere    1 − ζ·cot ζ = Bi          C = 4 (sin ζ − ζ cos ζ) / (2ζ − sin 2ζ)
 * Each root has a bracket of its own, so none is missed. Valid for Bi > 0. Source: Incropera & DeWitt,
 * Fundamentals of Heat and Mass Transfer, ch. 5 (from memory).
 */
import { besselJ01 } from './bessel.ts';
import { rootBetween } from './roots.ts';

export type Geometry = 'wall' | 'cylinder' | 'sphere';

export interface SeriesTerm {
  zeta: number;
  coefficient: number;
}

const TERM: Record<Geometry, (biot: number, n: number) => SeriesTerm> = {
  wall: wallTerm,
  cylinder: cylinderTerm,
  sphere: sphereTerm,
};

/** The n-th term (n = 1, 2, 3 …) for a Biot number; a RangeError unless Bi > 0. */
export function seriesTerm(geometry: Geometry, biot: number, n: number): SeriesTerm {
  if (!(biot > 0 && Number.isFinite(biot)))
    throw new RangeError(`A Biot number is more than 0, not ${biot}.`);
  return TERM[geometry](biot, n);
}

/** ζ sin ζ = Bi cos ζ lies once in each ((n−1)π, (n−½)π). */
function wallTerm(biot: number, n: number): SeriesTerm {
  const curve = (z: number) => ({
    value: z * Math.sin(z) - biot * Math.cos(z),
    slope: (1 + biot) * Math.sin(z) + z * Math.cos(z),
  });
  const zeta = rootBetween(curve, (n - 1) * Math.PI, (n - 0.5) * Math.PI);
  return { zeta, coefficient: (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta)) };
}

/**
 * The n-th root lies between a zero of J1 and the next of J0; (n−⅞)π … (n−⅛)π holds both (for n = 1 from 0)
 * and no other root, since the neighbours lie beyond their own zeros.
 */
function cylinderTerm(biot: number, n: number): SeriesTerm {
  const curve = (z: number) => {
    const { j0, j1 } = besselJ01(z);
    return { value: z * j1 - biot * j0, slope: z * j0 + biot * j1 };
  };
  const zeta = rootBetween(curve, n === 1 ? 0 : (n - 0.875) * Math.PI, (n - 0.125) * Math.PI);
  const { j0, j1 } = besselJ01(zeta);
  return { zeta, coefficient: (2 * j1) / (zeta * (j0 * j0 + j1 * j1)) };
}

/** ζ cos ζ = (1 − Bi) sin ζ lies once in each ((n−1)π, nπ). */
function sphereTerm(biot: number, n: number): SeriesTerm {
  const curve = (z: number) => ({
    value: (1 - biot) * Math.sin(z) - z * Math.cos(z),
    slope: z * Math.sin(z) - biot * Math.cos(z),
  });
  const low = n === 1 ? smallSphereRoot(biot) : (n - 1) * Math.PI;
  const zeta = rootBetween(curve, low, n * Math.PI);
  const coefficient = (4 * (Math.sin(zeta) - zeta * Math.cos(zeta))) / (2 * zeta - Math.sin(2 * zeta));
  return { zeta, coefficient };
}

/** Below the first root, yet clear of the curve's own zero at ζ = 0: there ζ² ≈ 3 Bi, and less for large Bi. */
function smallSphereRoot(biot: number): number {
  return Math.min(0.5, Math.sqrt(biot));
}
