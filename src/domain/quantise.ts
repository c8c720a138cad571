/**
 * Results are quantised on leaving a computation, so that engines whose sin, exp or pow differ in the last
 * digits still print the same bytes. Never compare or sort values that have not passed through here.
 */
function toStep(value: number, perUnit: number): number {
  const whole = Math.round(value * perUnit);
  return whole === 0 ? 0 : whole / perUnit;
}

/** To 0.001 mm. */
export const quantiseMm = (mm: number): number => toStep(mm, 1000);
/** To 0.01 mm². */
export const quantiseMm2 = (mm2: number): number => toStep(mm2, 100);
/** To 0.001 mL. */
export const quantiseMl = (ml: number): number => toStep(ml, 1000);
/** To 0.001 g. */
export const quantiseG = (g: number): number => toStep(g, 1000);
/** To 0.001 minute. */
export const quantiseMin = (min: number): number => toStep(min, 1000);
/** To 0.000001: ratios, counts before rounding, densities. */
export const quantiseRatio = (ratio: number): number => toStep(ratio, 1_000_000);
