/** Bake times as people say them: to the nearest five minutes, in hours from a hundred minutes up. */
const STEP = 5;
const HOURS_FROM = 100;

/** Minutes on the five, never less than five. */
export const nearestFive = (minutes: number): number => Math.max(STEP, Math.round(minutes / STEP) * STEP);

/**
 * A time to the nearest five minutes.
 * @example formatBakeMinutes(133.2) // '2 h 15 min'
 */
export function formatBakeMinutes(minutes: number): string {
  const whole = nearestFive(minutes);
  if (whole < HOURS_FROM) return `${whole}\u00a0min`;
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return rest === 0 ? `${hours}\u00a0h` : `${hours}\u00a0h ${rest}\u00a0min`;
}

/**
 * A logged time, to the minute.
 * @example formatLoggedMinutes(190) // '3 h 10 min'
 */
export function formatLoggedMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < HOURS_FROM) return `${whole}\u00a0min`;
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return rest === 0 ? `${hours}\u00a0h` : `${hours}\u00a0h ${rest}\u00a0min`;
}
