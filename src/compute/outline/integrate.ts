/**
 * ∫f over an interval by adaptive Gauss–Legendre: five points against twice five, halved until both agree.
 * Nodes and weights: Abramowitz & Stegun, Handbook of Mathematical Functions (1964), table 25.4, from memory;
 * the tests check them against polynomials up to degree 9.
 */
const NODES: readonly (readonly [node: number, weight: number])[] = [
  [0, 0.5688888888888889],
  [0.5384693101056831, 0.47862867049936647],
  [-0.5384693101056831, 0.47862867049936647],
  [0.906179845938664, 0.23692688505618908],
  [-0.906179845938664, 0.23692688505618908],
];

function fivePoints(f: (t: number) => number, from: number, to: number): number {
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  return half * NODES.reduce((sum, [node, weight]) => sum + weight * f(middle + half * node), 0);
}

/** The integral within `tolerance` (absolute); bisection stops after 40 halvings of a kink or a cusp. */
export function integrate(
  f: (t: number) => number,
  from: number,
  to: number,
  tolerance: number,
  halvings = 40,
): number {
  const refine = (a: number, b: number, whole: number, allowed: number, left: number): number => {
    const middle = (a + b) / 2;
    const first = fivePoints(f, a, middle);
    const second = fivePoints(f, middle, b);
    if (left === 0 || Math.abs(first + second - whole) <= allowed) return first + second;
    return refine(a, middle, first, allowed / 2, left - 1) + refine(middle, b, second, allowed / 2, left - 1);
  };
  return refine(from, to, fivePoints(f, from, to), tolerance, halvings);
}
