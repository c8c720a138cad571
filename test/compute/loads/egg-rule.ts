/** The whole-egg rule of an equal-weights batter: 200 g to the egg, 6 % either way, else one egg more. */
export function eggSurplusG(batterG: number): number {
  const exact = batterG / 200;
  const near = Math.max(1, Math.round(exact));
  if (Math.abs(near / exact - 1) <= 0.06) return near < exact ? -(exact - near) * 50 : (near - exact) * 50;
  return Math.ceil(exact) * 200 - batterG;
}
