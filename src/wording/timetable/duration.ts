/** Lengths of time, exact to the minute. */

/**
 * Hours from sixty minutes up.
 * @example formatDuration(310) // '5 h 10 min'
 */
export function formatDuration(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  if (hours === 0) return `${rest}\u00a0min`;
  return rest === 0 ? `${hours}\u00a0h` : `${hours}\u00a0h\u00a0${rest}\u00a0min`;
}
