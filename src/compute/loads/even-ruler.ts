/**
 * How uneven are some loads? The sum over loads of the squared distance from the mean load, in whole steps: a
 * distance of less than half a step counts as none.
 */
import type { LoadCost } from './search.ts';

export interface EvenRuler {
  unevenness: (mg: number) => number;
  /** Never more than what loads that hold `mg` together cost. */
  leastCost: (mg: number, loads: number) => LoadCost;
  /** Masses whose own unevenness is within a budget. */
  evenWindowMg: (budget: number) => { from: number; to: number };
}

const squared = (x: number): number => x * x;

/** A ruler about a mean load, with the step that no longer matters, both in mg. */
export function evenRuler(meanMg: number, stepMg: number): EvenRuler {
  return {
    unevenness: (mg) => squared(Math.round(Math.abs(mg - meanMg) / stepMg)),
    // Convex, so loads that share `mg` equally have the least; rounding gives back at most half a step each.
    leastCost: (mg, loads) => ({
      surplusMg: 0,
      unevenness: loads * squared(Math.max(0, Math.abs(mg / loads - meanMg) / stepMg - 0.5)),
    }),
    evenWindowMg: (budget) => {
      const reachMg = budget < 0 ? -1 : (Math.floor(Math.sqrt(budget)) + 0.5) * stepMg;
      return { from: Math.ceil(meanMg - reachMg), to: Math.floor(meanMg + reachMg) };
    },
  };
}
