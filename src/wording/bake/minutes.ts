/** Bake times as people say them: to the nearest five minutes, in hours from a hundred minutes up. */
import { nearestFive } from '../../domain/bake-minutes.ts';

const HOURS_FROM = 100;

/**
 * A time to the nearest five minutes.
 * @example formatBakeMinutes(133.2) // '2 h 15 min'
 */
export const formatBakeMinutes = (minutes: number): string => formatLoggedMinutes(nearestFive(minutes));

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
