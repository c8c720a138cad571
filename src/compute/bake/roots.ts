/** Where does a smooth curve cross zero between two points of opposite sign? Newton's steps, kept in the bracket. */
export type ValueAndSlope = (x: number) => { value: number; slope: number };

/**
 * The root between `low` and `high`; the values there must differ in sign (a RangeError otherwise: a bug).
 * A step that leaves the bracket is replaced by halving, so it cannot run away.
 */
export function rootBetween(curve: ValueAndSlope, low: number, high: number): number {
  let [from, to] = [low, high];
  const rising = curve(low).value < 0;
  if (rising !== curve(high).value > 0) throw new RangeError(`No change of sign between ${low} and ${high}.`);
  let x = (from + to) / 2;
  for (let step = 0; step < 200; step++) {
    const { value, slope } = curve(x);
    if (value === 0) return x;
    if (value < 0 === rising) from = x;
    else to = x;
    const newton = x - value / slope;
    const inside = newton > from && newton < to;
    const next = inside ? newton : (from + to) / 2;
    // Newton's error is squared by every step: after one this small, nothing is left to gain.
    if (Math.abs(next - x) <= (inside ? 1e-9 : 2e-16) * Math.abs(x)) return next;
    x = next;
  }
  return x;
}
