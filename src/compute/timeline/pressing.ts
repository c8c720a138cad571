/**
 * Ideas of what presses most when work is placed from the hand-overs backwards: what can be latest, what has most
 * to come before it, both in different measure, and each of these shaken a little in a fixed way.
 */
import type { Activity, Placed } from './activity.types.ts';

const MEASURES = [0, 1, 0.5, 2, 0.25];

/** The same numbers each time: no chance in it (linear congruence, Numerical Recipes' constants, from memory). */
function shaker(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** So many lists of how much each activity presses. */
export function pressingRules(
  activities: readonly Activity[],
  heads: readonly number[],
  latest: readonly Placed[],
  count: number,
): number[][] {
  const ends = activities.map(({ id, minutes }) => (latest[id]?.start ?? 0) + minutes);
  const first = Math.min(...ends);
  const widest = Math.max(1, Math.max(...ends) - first);
  return Array.from({ length: count }, (_, round) => {
    const measure = MEASURES[round % MEASURES.length] ?? 0;
    const shake = shaker(round + 1);
    const reach = round < MEASURES.length ? 0 : (widest * (round - MEASURES.length + 1)) / (8 * count);
    return activities.map(
      ({ id }, at) => (ends[at] ?? 0) - first + measure * (heads[id] ?? 0) + reach * (shake() - 0.5),
    );
  });
}
